package fingering.engraving.spacing;

import com.google.common.collect.ImmutableList;
import fingering.engraving.glyph.Glyph;
import fingering.engraving.ink.Kind;
import fingering.engraving.notes.Chord;
import fingering.engraving.notes.MeasureNotes;
import fingering.music.Measure;
import fingering.music.print.Clef;
import fingering.music.print.PrintedMeasure;
import fingering.music.print.TimeSign;
import fingering.music.print.TimeSign.Symbol;
import fingering.music.print.TimeSign.Term;
import fingering.tables.Pitch;
import java.util.Optional;

/** Clefs, key signatures and time signatures: their signs, placed from 0 to the right. */
public final class Signatures {
  /** Steps of the sharps, and below of the flats, in the treble clef (common practice). */
  private static final int[] SHARP_STEPS = {8, 5, 9, 6, 3, 7, 4};

  private static final int[] FLAT_STEPS = {4, 7, 3, 6, 2, 5, 1};

  /** In the tenor clef the sharps begin low, so that none is above the staff. */
  private static final int[] TENOR_SHARP_STEPS = {2, 6, 3, 7, 4, 8, 5};

  /** The size of a clef that changes within a line. */
  private static final double SMALL = 0.7;

  private static final double GAP = 0.12;

  private Signatures() {}

  /** A clef at full size, or small where it changes. */
  public static ImmutableList<Placed> clef(Clef clef, boolean small) {
    double scale = small ? SMALL : 1;
    double y = 5 - clef.line();
    Glyph glyph =
        switch (clef.sign()) {
          case G -> Glyph.G_CLEF;
          case F -> Glyph.F_CLEF;
          case C -> Glyph.C_CLEF;
        };
    Placed sign = new Placed(Kind.CLEF, glyph, 0, y, scale);
    if (clef.octaves() == 0) {
      return ImmutableList.of(sign);
    }
    double x = (sign.box().width() - Glyph.CLEF_8.width() * scale) / 2;
    double eight =
        clef.octaves() < 0
            ? sign.box().bottom() + Glyph.CLEF_8.box().height() * scale
            : sign.box().top();
    return ImmutableList.of(sign, new Placed(Kind.CLEF, Glyph.CLEF_8, x, eight, scale));
  }

  /**
   * A key signature.
   *
   * @param fifths number of sharps, negative for flats
   * @param before the key before
   * @param cancel whether naturals cancel the signs of the key before; otherwise they do so only
   *     where no sharps or flats follow
   */
  public static ImmutableList<Placed> key(Clef clef, int fifths, int before, boolean cancel) {
    ImmutableList.Builder<Placed> signs = ImmutableList.builder();
    double x = 0;
    int back = fifths == 0 || cancel ? naturals(fifths, before) : 0;
    for (int i = signs(before) - back; i < signs(before); i++) {
      signs.add(sign(Glyph.NATURAL, x, step(clef, i, before > 0)));
      x += Glyph.NATURAL.width() + GAP;
    }
    x += back > 0 && fifths != 0 ? 3 * GAP : 0;
    for (int i = 0; i < signs(fifths); i++) {
      Glyph glyph = HeadGlyphs.accidental(fifths > 0 ? 1 : -1);
      signs.add(sign(glyph, x, step(clef, i, fifths > 0)));
      x += glyph.width() + GAP;
    }
    return signs.build();
  }

  private static Placed sign(Glyph glyph, double x, int step) {
    return new Placed(Kind.KEY, glyph, x, Chord.y(step), 1);
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

  /** The step of the sharp or flat with that index in a clef. */
  private static int step(Clef clef, int index, boolean sharp) {
    Clef plain = new Clef(clef.sign(), clef.line(), 0);
    if (sharp && plain.equals(Clef.TENOR)) {
      return TENOR_SHARP_STEPS[index];
    }
    int shift = Math.floorMod(plain.step(Pitch.parse("B4")) - 4, 7);
    return (sharp ? SHARP_STEPS : FLAT_STEPS)[index] + (shift > 3 ? shift - 7 : shift);
  }

  /** A time signature as printed, or as numbers if none is printed at the start of the measure. */
  public static ImmutableList<Placed> meter(MeasureNotes notes) {
    Optional<TimeSign> printed =
        notes.printed().times().stream()
            .filter(change -> change.onset().signum() == 0)
            .map(PrintedMeasure.TimeChange::sign)
            .findFirst();
    Measure measure = notes.measure();
    TimeSign sign =
        printed.orElseGet(
            () ->
                new TimeSign(
                    Symbol.NUMBERS,
                    ImmutableList.of(
                        new Term(Integer.toString(measure.beats()), measure.beatType()))));
    return switch (sign.symbol()) {
      case COMMON -> ImmutableList.of(new Placed(Kind.METER, Glyph.TIME_COMMON, 0, 2, 1));
      case CUT -> ImmutableList.of(new Placed(Kind.METER, Glyph.TIME_CUT, 0, 2, 1));
      case SENZA_MISURA -> ImmutableList.of();
      case SINGLE_NUMBER, NUMBERS -> numbers(sign);
    };
  }

  private static ImmutableList<Placed> numbers(TimeSign sign) {
    ImmutableList.Builder<Placed> all = ImmutableList.builder();
    double x = 0;
    for (int i = 0; i < sign.terms().size(); i++) {
      if (i > 0) {
        Placed plus = new Placed(Kind.METER, Glyph.TIME_PLUS, x + 0.3, 2, 1);
        all.add(plus);
        x = plus.box().right() + 0.3;
      }
      Term term = sign.terms().get(i);
      boolean single = sign.symbol() == Symbol.SINGLE_NUMBER;
      ImmutableList<Placed> above = figures(term.upper(), single ? 2 : 1);
      ImmutableList<Placed> below =
          single ? ImmutableList.of() : figures(Integer.toString(term.lower()), 3);
      double wide = Math.max(width(above), width(below));
      all.addAll(moved(above, x + (wide - width(above)) / 2));
      all.addAll(moved(below, x + (wide - width(below)) / 2));
      x += wide;
    }
    return all.build();
  }

  /** A row of figures and plus signs. */
  private static ImmutableList<Placed> figures(String number, double y) {
    ImmutableList.Builder<Placed> figures = ImmutableList.builder();
    double x = 0;
    for (int i = 0; i < number.length(); i++) {
      char figure = number.charAt(i);
      boolean digit = figure >= '0' && figure <= '9';
      if (digit || figure == '+') {
        Glyph glyph = digit ? Glyph.time(figure - '0') : Glyph.TIME_PLUS;
        figures.add(new Placed(Kind.METER, glyph, x, y, 1));
        x += glyph.advance();
      }
    }
    return figures.build();
  }

  /** The same signs further right. */
  public static ImmutableList<Placed> moved(ImmutableList<Placed> signs, double dx) {
    return signs.stream()
        .map(one -> new Placed(one.kind(), one.glyph(), one.x() + dx, one.y(), one.scale()))
        .collect(ImmutableList.toImmutableList());
  }

  /** The right edge of signs; 0 if there are none. */
  public static double width(ImmutableList<Placed> signs) {
    return signs.stream().mapToDouble(sign -> sign.box().right()).max().orElse(0);
  }

  /** Whether the time signature of a measure differs from the one before. */
  public static boolean meterChanges(Measure before, Measure after) {
    return before.beats() != after.beats() || before.beatType() != after.beatType();
  }
}
