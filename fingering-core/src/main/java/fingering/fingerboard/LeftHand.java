package fingering.fingerboard;

import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The player's left hand: how far it reaches, and which of the ways that players differ in it uses.
 *
 * @param share reach as a share of what the instrument's size expects, 1 for a medium hand
 * @param millimetres reach between first and fourth finger where it was measured, whatever the
 *     instrument; it goes before the share
 * @param fourFingers whether on the double bass each finger takes a semitone, instead of 1-2-4
 * @param lowThumb whether the thumb is used on the string below the octave in single notes too
 */
public record LeftHand(
    double share, OptionalDouble millimetres, boolean fourFingers, boolean lowThumb) {
  private static final Pattern LENGTH = Pattern.compile("(\\d{2,3}(?:\\.\\d)?)(?: ?mm)?");
  private static final double LEAST = 40;
  private static final double MOST = 220;

  /** A medium hand. */
  public static final LeftHand MEDIUM = of(1);

  /** A small hand: a twelfth less than a medium one (common practice, no source). */
  public static final LeftHand SMALL = of(0.92);

  /** A large hand: a twelfth more than a medium one (common practice, no source). */
  public static final LeftHand LARGE = of(1.08);

  private static LeftHand of(double share) {
    return new LeftHand(share, OptionalDouble.empty(), false, false);
  }

  /**
   * Reads {@code small}, {@code medium}, {@code large}, or the reach between first and fourth
   * finger on the string, from 40 to 220 mm: {@code 102mm}.
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
    if (reach < LEAST || reach > MOST) {
      throw new FingeringException(
          "'"
              + text
              + "' is no hand; write small, medium, large, or how far first and fourth finger reach"
              + " on a string, 40 to 220 mm, such as 102mm");
    }
    return new LeftHand(1, OptionalDouble.of(reach), false, false);
  }

  /** The same hand, with or without a finger for each semitone on the double bass. */
  public LeftHand withFourFingers(boolean four) {
    return new LeftHand(share, millimetres, four, lowThumb);
  }

  /** The same hand, with or without the thumb on the string below the octave. */
  public LeftHand withLowThumb(boolean low) {
    return new LeftHand(share, millimetres, fourFingers, low);
  }

  /** Millimetres between first and fourth finger stretched along a string of the instrument. */
  public double reach(Instrument instrument) {
    return millimetres.orElse(share * instrument.reach());
  }
}
