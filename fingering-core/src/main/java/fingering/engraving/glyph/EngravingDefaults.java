package fingering.engraving.glyph;

/**
 * Thicknesses and distances of engraved music, in staff spaces. The values follow the {@code
 * engravingDefaults} that the SMuFL standard describes, as a common SMuFL font sets them, from
 * memory; the name in SMuFL stands with each.
 */
public final class EngravingDefaults {
  /** Thickness of a line of the staff: {@code staffLineThickness}. */
  public static final double STAFF_LINE = 0.13;

  /** Thickness of a stem: {@code stemThickness}. */
  public static final double STEM = 0.12;

  /** Thickness of a beam: {@code beamThickness}. */
  public static final double BEAM = 0.5;

  /** White between two beams of a group: {@code beamSpacing}. */
  public static final double BEAM_GAP = 0.25;

  /** Thickness of a ledger line: {@code legerLineThickness}. */
  public static final double LEDGER_LINE = 0.16;

  /** How far a ledger line reaches out on each side of a notehead: {@code legerLineExtension}. */
  public static final double LEDGER_EXTENSION = 0.4;

  /** Thickness of a slur at its ends: {@code slurEndpointThickness}. */
  public static final double SLUR_END = 0.1;

  /** Thickness of a slur in the middle: {@code slurMidpointThickness}. */
  public static final double SLUR_MIDDLE = 0.22;

  /** Thickness of a tie at its ends: {@code tieEndpointThickness}. */
  public static final double TIE_END = 0.1;

  /** Thickness of a tie in the middle: {@code tieMidpointThickness}. */
  public static final double TIE_MIDDLE = 0.22;

  /** Thickness of a thin bar line: {@code thinBarlineThickness}. */
  public static final double THIN_BAR_LINE = 0.16;

  /** Thickness of a thick bar line: {@code thickBarlineThickness}. */
  public static final double THICK_BAR_LINE = 0.5;

  /** White between two bar lines: {@code barlineSeparation}. */
  public static final double BAR_LINE_GAP = 0.4;

  /** White between a repeat's dots and its thin bar line: {@code repeatBarlineDotSeparation}. */
  public static final double REPEAT_DOT_GAP = 0.16;

  /** Thickness of a hairpin's lines: {@code hairpinThickness}. */
  public static final double HAIRPIN = 0.16;

  /** Thickness of a tuplet's bracket: {@code tupletBracketThickness}. */
  public static final double TUPLET_BRACKET = 0.16;

  /**
   * Thickness of a line that extends a word or a number: {@code lyricLineThickness}, {@code
   * octaveLineThickness}.
   */
  public static final double EXTENDER_LINE = 0.16;

  private EngravingDefaults() {}
}
