package fingering.engraving.glyph;

/**
 * A point of a shape where something else joins it, in staff spaces from the shape's origin.
 *
 * @param x to the right
 * @param y downward
 */
public record Anchor(double x, double y) {}
