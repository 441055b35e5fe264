package fingering.engraving.spacing;

import fingering.engraving.glyph.Box;
import fingering.engraving.glyph.Glyph;
import fingering.engraving.ink.Kind;

/**
 * A shape at its place in a column.
 *
 * @param kind what it is
 * @param glyph the shape
 * @param x staff spaces from the left edge of the column's heads
 * @param y staff spaces from the top line of the staff
 * @param scale 1 for full size
 */
public record Placed(Kind kind, Glyph glyph, double x, double y, double scale) {
  /** The box around it. */
  public Box box() {
    return glyph.box().scaled(scale).moved(x, y);
  }
}
