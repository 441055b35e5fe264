package fingering.page.staff;

import fingering.music.print.Clef;
import fingering.page.svg.Svg;
import fingering.tables.Pitch;

/** Draws clef, key signature and time signature. */
final class Signature {
  /** Steps of the sharps, and below of the flats, in the treble clef (common practice). */
  private static final int[] SHARP_STEPS = {8, 5, 9, 6, 3, 7, 4};

  private static final int[] FLAT_STEPS = {4, 7, 3, 6, 2, 5, 1};

  /** In the tenor clef the sharps begin low, so that none is above the staff. */
  private static final int[] TENOR_SHARP_STEPS = {2, 6, 3, 7, 4, 8, 5};

  private static final double CLEF_WIDTH = 28;
  private static final double SIGN_WIDTH = 8;

  private Signature() {}

  /** The step of the sharp or flat with that index in a clef. */
  static int step(Clef clef, int index, boolean sharp) {
    Clef plain = new Clef(clef.sign(), clef.line(), 0);
    if (sharp && plain.equals(Clef.TENOR)) {
      return TENOR_SHARP_STEPS[index];
    }
    int shift = Math.floorMod(plain.step(Pitch.parse("B4")) - 4, 7);
    return (sharp ? SHARP_STEPS : FLAT_STEPS)[index] + (shift > 3 ? shift - 7 : shift);
  }

  /** The width of clef and key together. */
  static double width(int fifths) {
    return CLEF_WIDTH + keyWidth(fifths, 0);
  }

  /** Draws a clef with its middle at x. */
  static void clef(Svg svg, Clef clef, double x) {
    svg.use(Glyphs.clef(clef), x, Stem.y(2 * (clef.line() - 1)));
    if (clef.octaves() != 0) {
      svg.text("octave", x, clef.octaves() < 0 ? 50 : -12, "8");
    }
  }

  /** Draws the smaller clef of a change of clef, on a staff with its top at y. */
  static void smallClef(Svg svg, Clef clef, double x, double y) {
    svg.raw(
            "<g transform=\"translate(%s,%s) scale(.75)\">"
                .formatted(Svg.number(x), Svg.number(y + 4)))
        .use(Glyphs.clef(clef), 0, Stem.y(2 * (clef.line() - 1)))
        .raw("</g>");
  }

  /** The width of a key signature after another one, with naturals for signs that are cancelled. */
  static double keyWidth(int fifths, int before) {
    return SIGN_WIDTH * (signs(fifths) + naturals(fifths, before));
  }

  /** The number of signs of a key: at most one for each letter, also in keys with double signs. */
  private static int signs(int fifths) {
    return Math.min(SHARP_STEPS.length, Math.abs(fifths));
  }

  /** The number of naturals: signs of the old key that the new one lacks. */
  private static int naturals(int fifths, int before) {
    boolean sameSide = (fifths >= 0) == (before >= 0);
    return sameSide ? Math.max(0, signs(before) - signs(fifths)) : signs(before);
  }

  /** Draws a key signature that begins at x. */
  static void key(Svg svg, Clef clef, int fifths, int before, double x) {
    double at = x + SIGN_WIDTH / 2;
    int back = naturals(fifths, before);
    for (int i = signs(before) - back; i < signs(before); i++) {
      svg.use("g-natural", at, Stem.y(step(clef, i, before > 0)));
      at += SIGN_WIDTH;
    }
    for (int i = 0; i < signs(fifths); i++) {
      sign(svg, fifths > 0 ? 1 : -1, at, Stem.y(step(clef, i, fifths > 0)));
      at += SIGN_WIDTH;
    }
  }

  /** Draws an accidental centred on a point. */
  static void sign(Svg svg, int alter, double x, double y) {
    switch (alter) {
      case 1 -> svg.use("g-sharp", x, y);
      case -1 -> svg.use("g-flat", x, y);
      case 0 -> svg.use("g-natural", x, y);
      case 2 -> svg.use("g-double", x, y);
      default -> svg.use("g-flat", x - 3, y).use("g-flat", x + 3, y);
    }
  }

  /** Draws a time signature centred on x. */
  static void meter(Svg svg, int beats, int beatType, double x) {
    svg.text("meter", x, 14.4, Integer.toString(beats));
    svg.text("meter", x, 30.4, Integer.toString(beatType));
  }

  /** The width of a time signature. */
  static double meterWidth(int beats, int beatType) {
    return 6
        + 12.0 * Math.max(Integer.toString(beats).length(), Integer.toString(beatType).length());
  }
}
