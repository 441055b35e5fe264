package fingering.dependencies;

import com.google.common.collect.ImmutableList;
import java.util.Arrays;
import java.util.Locale;

/**
 * Licences that libraries name in their descriptions, in the identifiers of the SPDX licence list
 * (from memory).
 */
enum Licence {
  APACHE("Apache-2.0", true, "apache"),
  // The Eclipse Distribution License 1.0 is the BSD licence of three clauses.
  EDL("EDL-1.0", true, "edl 1.0", "eclipse distribution license"),
  MIT("MIT", true, "mit"),
  BSD_2("BSD-2-Clause", true, "bsd 2", "bsd-2", "bsd 2-clause", "freebsd"),
  // ArchUnit says no more of the ASM in it, which is of three clauses.
  BSD_3("BSD-3-Clause", true, "bsd 3", "bsd-3", "3-clause bsd", "new bsd", "bsd"),
  LGPL_3("LGPL-3.0", true, "lgpl) version 3"),
  LGPL_2_1("LGPL-2.1", false, "lesser general public license version 2.1", "lgpl 2.1", "lgpl-2.1"),
  EPL_1("EPL-1.0", false, "eclipse public license 1.0", "epl-1.0"),
  EPL_2(
      "EPL-2.0",
      false,
      "eclipse public license v2",
      "eclipse public license - v 2",
      "eclipse public license (epl) 2",
      "epl-2.0"),
  GPL_2_CLASSPATH("GPL-2.0 with Classpath exception", false, "gpl"),
  MPL_2("MPL-2.0", false, "mozilla public license", "mpl");

  private final String id;
  private final boolean goesIntoJar;
  private final ImmutableList<String> words;

  Licence(String id, boolean goesIntoJar, String... words) {
    this.id = id;
    this.goesIntoJar = goesIntoJar;
    this.words = ImmutableList.copyOf(words);
  }

  String id() {
    return id;
  }

  /** Whether a library under it may be handed out in one jar with the others. */
  boolean goesIntoJar() {
    return goesIntoJar;
  }

  /** The licence of that name; the first that fits, so that the narrower ones come first. */
  static Licence named(String name) {
    String text = name.toLowerCase(Locale.ROOT);
    return Arrays.stream(values())
        .filter(licence -> licence.words.stream().anyMatch(word -> named(word, text)))
        .findFirst()
        .orElseThrow(
            () -> new IllegalStateException("No licence is known by the name of '" + name + "'."));
  }

  private static boolean named(String word, String text) {
    int at = text.indexOf(word);
    return at == 0 || (at > 0 && !Character.isLetter(text.charAt(at - 1)));
  }
}
