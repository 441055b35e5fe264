package fingering.engraving.glyph;

import com.google.common.base.Ascii;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import java.util.EnumSet;
import java.util.Optional;

/**
 * A sign of music notation as a drawn shape: curves made for this program, not taken from a font,
 * in {@code glyphs.table}. Lengths are in staff spaces; y grows downward.
 *
 * <p>Origins are those of the SMuFL standard (from memory). x = 0 is the left edge; for a flag that
 * is the left side of the stem. y = 0 is
 *
 * <ul>
 *   <li>for a clef, the line that it names: G, F or C;
 *   <li>for a notehead, an accidental or a dot, the line of the note or the middle of its space;
 *   <li>for a whole rest, the line that it hangs from, the second from the top; for every other
 *       rest, the middle line;
 *   <li>for a flag, the end of the stem. All flags of a shape lie between there and the head, each
 *       0.75 below the one before, so a stem with three or more flags is made longer by 0.75 each
 *       (unlike in SMuFL, where such flags reach beyond the end of a stem of usual length);
 *   <li>for the signs of a time signature, their middle: the upper figure stands at the second line
 *       from the top, the lower at the second from the bottom;
 *   <li>for a staccato, a tenuto, an accent and a {@link #WAVE}, their middle;
 *   <li>for a sign whose name ends in {@code BELOW}, the top edge;
 *   <li>for {@link #ARPEGGIO}, the top edge: repeat it 1.0 further down each time;
 *   <li>for everything else, the baseline or the bottom edge. Letters and notes of tempo marks
 *       stand on the baseline; the tails of p and f and round edges hang below it.
 * </ul>
 */
public enum Glyph {
  G_CLEF,
  F_CLEF,
  C_CLEF,
  CLEF_8,

  HEAD_BREVE,
  HEAD_WHOLE,
  HEAD_HALF,
  HEAD_BLACK,
  HEAD_DIAMOND_OPEN,
  HEAD_DIAMOND_BLACK,
  DOT,
  REPEAT_DOT,

  SHARP,
  FLAT,
  NATURAL,
  DOUBLE_SHARP,
  DOUBLE_FLAT,
  PAREN_LEFT,
  PAREN_RIGHT,

  REST_BREVE,
  REST_WHOLE,
  REST_HALF,
  REST_QUARTER,
  REST_8,
  REST_16,
  REST_32,
  REST_64,
  REST_128,

  FLAG_8_UP,
  FLAG_16_UP,
  FLAG_32_UP,
  FLAG_64_UP,
  FLAG_128_UP,
  FLAG_8_DOWN,
  FLAG_16_DOWN,
  FLAG_32_DOWN,
  FLAG_64_DOWN,
  FLAG_128_DOWN,

  TIME_0,
  TIME_1,
  TIME_2,
  TIME_3,
  TIME_4,
  TIME_5,
  TIME_6,
  TIME_7,
  TIME_8,
  TIME_9,
  TIME_COMMON,
  TIME_CUT,
  TIME_PLUS,

  STACCATO,
  TENUTO,
  ACCENT,
  STACCATISSIMO_ABOVE,
  STACCATISSIMO_BELOW,
  MARCATO_ABOVE,
  MARCATO_BELOW,
  FERMATA_ABOVE,
  FERMATA_BELOW,
  BREATH,
  CAESURA,

  TRILL,
  TURN,
  TURN_INVERTED,
  MORDENT,
  SHORT_TRILL,
  WAVE,
  ARPEGGIO,

  DOWN_BOW,
  UP_BOW,
  HARMONIC,
  PLUCKED_LEFT,
  SNAP,
  THUMB,

  SEGNO,
  CODA,

  DYNAMIC_P,
  DYNAMIC_M,
  DYNAMIC_F,
  DYNAMIC_S,
  DYNAMIC_Z,
  DYNAMIC_R,
  DYNAMIC_N,

  FINGER_0,
  FINGER_1,
  FINGER_2,
  FINGER_3,
  FINGER_4,
  FINGER_5,
  NUMERAL_I,
  NUMERAL_V,

  ITALIC_0,
  ITALIC_1,
  ITALIC_2,
  ITALIC_3,
  ITALIC_4,
  ITALIC_5,
  ITALIC_6,
  ITALIC_7,
  ITALIC_8,
  ITALIC_9,

  NOTE_HALF,
  NOTE_QUARTER,
  NOTE_8,
  NOTE_16;

  private static final ImmutableMap<String, Outline> OUTLINES = Outline.all();

  private static final ImmutableMap<Glyph, String> IDS = ids();
  private static final ImmutableList<Glyph> TIME = range(TIME_0, TIME_9);
  private static final ImmutableList<Glyph> FINGERS = range(FINGER_0, FINGER_5);
  private static final ImmutableList<Glyph> ITALIC = range(ITALIC_0, ITALIC_9);

  /** The figure of a time signature for a digit from 0 to 9. */
  public static Glyph time(int digit) {
    return TIME.get(digit);
  }

  /** The numeral of a finger from 1 to 4, of the open string (0), or 5. */
  public static Glyph finger(int finger) {
    return FINGERS.get(finger);
  }

  /** The italic figure, as for tuplets, for a digit from 0 to 9. */
  public static Glyph italic(int digit) {
    return ITALIC.get(digit);
  }

  /** A name for an element of a picture, as short as can be: long music has thousands. */
  public String id() {
    return Optional.ofNullable(IDS.get(this)).orElseThrow();
  }

  private static ImmutableMap<Glyph, String> ids() {
    ImmutableMap.Builder<Glyph, String> ids = ImmutableMap.builder();
    int number = 0;
    for (Glyph glyph : values()) {
      ids.put(glyph, "g" + Integer.toString(number++, Character.MAX_RADIX));
    }
    return ids.buildOrThrow();
  }

  /** The outline as SVG path data, to be filled by the nonzero rule, which is SVG's own. */
  public String path() {
    return outline().path();
  }

  /** The box around the outline. */
  public Box box() {
    return outline().box();
  }

  /** The width of the outline. */
  public double width() {
    return box().width();
  }

  /** Where the next sign of a row starts, such as the 2 of a 12, or the next {@link #WAVE}. */
  public double advance() {
    return outline().advance();
  }

  /**
   * Where a stem that goes up joins a notehead: the right side of the stem ({@code stemUpSE} in
   * SMuFL). For other shapes the right edge at y = 0.
   */
  public Anchor stemUp() {
    return outline().stemUp();
  }

  /**
   * Where a stem that goes down joins a notehead: the left side of the stem ({@code stemDownNW} in
   * SMuFL). For other shapes the left edge at y = 0.
   */
  public Anchor stemDown() {
    return outline().stemDown();
  }

  /** The name of the row in the table. */
  String key() {
    return Ascii.toLowerCase(name()).replace('_', '-');
  }

  private static ImmutableList<Glyph> range(Glyph first, Glyph last) {
    return ImmutableList.copyOf(EnumSet.range(first, last));
  }

  private Outline outline() {
    Outline outline = OUTLINES.get(key());
    if (outline == null) {
      throw new IllegalStateException("glyphs.table has no row " + key());
    }
    return outline;
  }
}
