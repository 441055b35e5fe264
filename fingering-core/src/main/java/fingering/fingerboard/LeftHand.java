package fingering.fingerboard;

import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A player's left hand: its reach and its technique.
 *
 * @param share reach relative to a medium-sized hand for the size of the instrument, 1 if equal;
 *     above 0
 * @param millimetres measured reach from first to fourth finger, above 0; takes precedence over the
 *     relative reach; empty if not measured
 * @param fourFingers whether each finger has its own semitone on the double bass, instead of 1-2-4
 * @param lowThumb whether single notes use the thumb below the octave too
 */
public record LeftHand(
    double share, OptionalDouble millimetres, boolean fourFingers, boolean lowThumb) {
  private static final Pattern LENGTH = Pattern.compile("(\\d{2,3}(?:\\.\\d)?)(?: ?mm)?");
  private static final double MIN_REACH = 40;
  private static final double MAX_REACH = 220;

  /** A medium-sized hand. */
  public static final LeftHand MEDIUM = of(1);

  /** A small hand, with 8 % less reach than a medium one (common practice, no source). */
  public static final LeftHand SMALL = of(0.92);

  /** A large hand, with 8 % more reach than a medium one (common practice, no source). */
  public static final LeftHand LARGE = of(1.08);

  /**
   * Checks the components.
   *
   * @throws IllegalArgumentException if a reach is not above 0
   */
  public LeftHand {
    if (!(share > 0) || !(millimetres.orElse(1) > 0)) {
      throw new IllegalArgumentException("a reach of " + share + ", " + millimetres);
    }
  }

  private static LeftHand of(double share) {
    return new LeftHand(share, OptionalDouble.empty(), false, false);
  }

  /**
   * Reads {@code small}, {@code medium}, {@code large}, or a reach from first to fourth finger of
   * 40 to 220 mm, such as {@code 102mm}. Case does not matter.
   *
   * @throws FingeringException if the text is none of these
   */
  public static LeftHand parse(String text) {
    String word = text.strip().toLowerCase(Locale.ROOT);
    switch (word) {
      case "small":
        return SMALL;
      case "medium":
        return MEDIUM;
      case "large":
        return LARGE;
      default:
        break;
    }
    Matcher length = LENGTH.matcher(word);
    double reach = length.matches() ? Double.parseDouble(length.group(1)) : 0;
    if (reach < MIN_REACH || reach > MAX_REACH) {
      throw new FingeringException(
          "'"
              + text
              + "' is not a hand; write small, medium, large, or the reach from first to fourth finger"
              + " on a string, 40 to 220 mm, such as 102mm");
    }
    return new LeftHand(1, OptionalDouble.of(reach), false, false);
  }

  /** The same hand, with or without four-finger fingering on the double bass. */
  public LeftHand withFourFingers(boolean four) {
    return new LeftHand(share, millimetres, four, lowThumb);
  }

  /** The same hand, with or without the thumb below the octave in single notes. */
  public LeftHand withLowThumb(boolean low) {
    return new LeftHand(share, millimetres, fourFingers, low);
  }

  /** Reach from first to fourth finger along a string of the instrument, in millimetres. */
  public double reach(Instrument instrument) {
    return millimetres.orElse(share * instrument.reach());
  }
}
