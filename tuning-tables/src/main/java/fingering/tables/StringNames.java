package fingering.tables;

import com.google.common.collect.ImmutableList;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The names by which players ask for a string: C, IV, 4, sul C. */
public final class StringNames {
  private static final Pattern SUL = Pattern.compile("^sul(l[ao'])?[ -]*");
  private static final Pattern WORD = Pattern.compile("[ -]*(string|corda)$");

  private final Instrument instrument;

  private StringNames(Instrument instrument) {
    this.instrument = instrument;
  }

  /** The names of an instrument's strings as it is tuned. */
  public static StringNames of(Instrument instrument) {
    return new StringNames(instrument);
  }

  /**
   * The string of that letter, Roman numeral or number (1 is the highest), with or without 'sul'.
   *
   * @throws FingeringException if there is none, or several share the letter
   */
  public OpenString find(String text) {
    String bare = SUL.matcher(text.strip().toLowerCase(Locale.ROOT)).replaceFirst("");
    String name = WORD.matcher(bare).replaceFirst("");
    ImmutableList<OpenString> found =
        instrument.strings().stream()
            .filter(string -> answers(string, name))
            .collect(ImmutableList.toImmutableList());
    if (found.size() == 1) {
      return found.get(0);
    }
    throw new FingeringException(
        (found.isEmpty()
                ? "The " + instrument.name().toLowerCase(Locale.ROOT) + " has no string '"
                : "Several strings answer to '")
            + text
            + "'; choose "
            + known()
            + ".");
  }

  private static boolean answers(OpenString string, String name) {
    return name.equals(Integer.toString(string.number()))
        || name.equalsIgnoreCase(string.roman())
        || name.equals(plain(string.letterName()));
  }

  private static String plain(String letterName) {
    return letterName.toLowerCase(Locale.ROOT).replace('♯', '#').replace('♭', 'b');
  }

  private String known() {
    return instrument.strings().reverse().stream()
        .map(string -> string.roman() + " (" + string.letterName() + ")")
        .collect(Collectors.joining(", "));
  }
}
