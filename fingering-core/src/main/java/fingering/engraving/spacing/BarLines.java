package fingering.engraving.spacing;

import fingering.engraving.glyph.EngravingDefaults;
import fingering.engraving.glyph.Glyph;
import fingering.music.print.PrintedMeasure.Bar;

/** The widths of bar lines. */
public final class BarLines {
  /** White between the dots of a repeat and its thin line. */
  public static final double DOT_GAP = 0.35;

  private BarLines() {}

  /** The width of a bar line, in staff spaces. */
  public static double width(Bar bar) {
    double thin = EngravingDefaults.THIN_BAR_LINE;
    double thick = EngravingDefaults.THICK_BAR_LINE;
    double gap = EngravingDefaults.BAR_LINE_GAP;
    return switch (bar) {
      case SINGLE, DASHED, DOTTED, TICK, SHORT -> thin;
      case NONE -> 0;
      case DOUBLE -> thin + gap + thin;
      case FINAL -> thin + gap + thick;
      case REPEAT -> Glyph.REPEAT_DOT.width() + DOT_GAP + thin + gap + thick;
    };
  }

  /** The width of the sign that starts a repeat. */
  public static double repeatStart() {
    return width(Bar.REPEAT);
  }
}
