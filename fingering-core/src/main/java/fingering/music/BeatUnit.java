package fingering.music;

import fingering.tables.FingeringException;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * A note value, of a note or of the beat that a metronome mark counts. {@link #parse} reads the
 * text of {@link #toString}.
 *
 * @param name the MusicXML name of the value: breve, whole, half, quarter, eighth, 16th, 32nd,
 *     64th; {@code sixteenth} is accepted and becomes {@code 16th}
 * @param dots augmentation dots, 0 to 2
 */
public record BeatUnit(String name, int dots) {
  private static final Pattern FORM =
      Pattern.compile("((?:double-)?dotted[- ])?([a-z0-9]+)(\\.{0,2})");

  /** The whole note. */
  public static final BeatUnit WHOLE = new BeatUnit("whole", 0);

  /** The half note. */
  public static final BeatUnit HALF = new BeatUnit("half", 0);

  /** The quarter note. */
  public static final BeatUnit QUARTER = new BeatUnit("quarter", 0);

  /** The eighth note. */
  public static final BeatUnit EIGHTH = new BeatUnit("eighth", 0);

  /** The sixteenth note. */
  public static final BeatUnit SIXTEENTH = new BeatUnit("16th", 0);

  /**
   * Checks the components, and replaces {@code sixteenth} by {@code 16th}.
   *
   * @throws FingeringException if the name is not a note value, or there are not 0 to 2 dots
   */
  public BeatUnit {
    if (dots < 0 || dots > 2) {
      throw new FingeringException(dots + " dots on a beat unit");
    }
    name = name.equals("sixteenth") ? "16th" : name;
    undotted(name);
  }

  /**
   * Reads {@code half}, {@code quarter.}, {@code dotted-quarter} or {@code double-dotted-quarter}.
   * Case does not matter.
   *
   * @throws FingeringException if the text is not a note value
   */
  public static BeatUnit parse(String text) {
    Matcher matcher = FORM.matcher(text.strip().toLowerCase(Locale.ROOT));
    if (!matcher.matches()) {
      throw new FingeringException(
          "'" + text + "' is not a note value; write half, quarter, dotted-quarter, eighth …");
    }
    return new BeatUnit(matcher.group(2), matcher.group(3).length() + dots(matcher.group(1)));
  }

  private static int dots(@Nullable String words) {
    return words == null ? 0 : words.startsWith("double") ? 2 : 1;
  }

  private static BigFraction undotted(String name) {
    return switch (name) {
      case "breve" -> BigFraction.of(8);
      case "whole" -> BigFraction.of(4);
      case "half" -> BigFraction.of(2);
      case "quarter" -> BigFraction.of(1);
      case "eighth" -> BigFraction.of(1, 2);
      case "16th" -> BigFraction.of(1, 4);
      case "32nd" -> BigFraction.of(1, 8);
      case "64th" -> BigFraction.of(1, 16);
      default ->
          throw new FingeringException(
              "'" + name + "' is not a note value; write half, quarter, dotted-quarter, eighth …");
    };
  }

  /**
   * The same value with one more dot.
   *
   * @throws FingeringException if it has two already
   */
  public BeatUnit dotted() {
    return new BeatUnit(name, dots + 1);
  }

  /** The length in quarter notes. */
  public BigFraction quarters() {
    BigFraction dotted = BigFraction.of((2 << dots) - 1, 1 << dots);
    return undotted(name).multiply(dotted);
  }

  /** For example {@code half}, {@code dotted-quarter} or {@code double-dotted-quarter}. */
  @Override
  public String toString() {
    return (dots == 0 ? "" : dots == 1 ? "dotted-" : "double-dotted-") + name;
  }
}
