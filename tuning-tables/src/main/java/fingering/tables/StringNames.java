package fingering.tables;

import com.google.common.collect.ImmutableList;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Finds a string by the names that players use: C, IV, 4, sul C. */
public final class StringNames {
  private static final Pattern SUL = Pattern.compile("^sul(l[ao'])?[ -]*");
  private static final Pattern WORD = Pattern.compile("[ -]*(string|corda)$");

  private final Instrument instrument;

  private StringNames(Instrument instrument) {
    this.instrument = instrument;
  }

  /** The names of the strings of an instrument in its present tuning. */
  public static StringNames of(Instrument instrument) {
    return new StringNames(instrument);
  }

  /**
   * The string with that letter, Roman numeral or number (1 is the highest), with or without 'sul'
   * before it or 'string' after it. Case does not matter.
   *
   * @throws FingeringException if there is no such string, or if several have the same letter
   */
  public OpenString find(String text) {
    String withoutSul = SUL.matcher(text.strip().toLowerCase(Locale.ROOT)).replaceFirst("");
    String name = WORD.matcher(withoutSul).replaceFirst("");
    ImmutableList<OpenString> found =
        instrument.strings().stream()
            .filter(string -> hasName(string, name))
            .collect(ImmutableList.toImmutableList());
    if (found.size() == 1) {
      return found.get(0);
    }
    throw new FingeringException(
        (found.isEmpty()
                ? "The " + instrument.name().toLowerCase(Locale.ROOT) + " has no string '"
                : "Several strings are called '")
            + text
            + "'; choose "
            + choices()
            + ".");
  }

  private static boolean hasName(OpenString string, String name) {
    return name.equals(Integer.toString(string.number()))
        || name.equalsIgnoreCase(string.roman())
        || name.equals(plain(string.letterName()));
  }

  private static String plain(String letterName) {
    return letterName.toLowerCase(Locale.ROOT).replace('♯', '#').replace('♭', 'b');
  }

  private String choices() {
    return instrument.strings().reverse().stream()
        .map(string -> string.roman() + " (" + string.letterName() + ")")
        .collect(Collectors.joining(", "));
  }
}
