package fingering.engraving.drawing;

import fingering.engraving.glyph.Box;
import fingering.engraving.ink.Canvas;
import fingering.engraving.ink.Kind;
import fingering.engraving.ink.Style;

/**
 * A slur or tie: a cubic curve, thin at its ends.
 *
 * @param x0 the left end
 * @param y0 its y
 * @param x1 the right end
 * @param y1 its y
 * @param bend how far the control points are above the line from end to end; negative below. On a
 *     steep line they also lean back, so that the curve stays symmetric
 * @param reach the distance of a control point from its end, as a share of the width
 */
record Curve(double x0, double y0, double x1, double y1, double bend, double reach) {
  /** The most boxes that stand for a curve. */
  private static final int MOST_BOXES = 120;

  /** How much of the way to the perpendicular the control points lean. */
  private static final double LEAN = 0.8;

  double x(double t) {
    return cubic(x0, x0 + (x1 - x0) * reach + lean(), x1 - (x1 - x0) * reach + lean(), x1, t);
  }

  double y(double t) {
    double c0 = y0 + (y1 - y0) * reach - bend;
    double c1 = y1 - (y1 - y0) * reach - bend;
    return cubic(y0, c0, c1, y1, t);
  }

  /** How far the control points move towards the perpendicular of the line between the ends. */
  private double lean() {
    double most = LEAN * (x1 - x0) * reach;
    double slope = (y1 - y0) / Math.max(1, x1 - x0);
    return Math.max(-most, Math.min(most, bend * slope * LEAN));
  }

  private static double cubic(double a, double b, double c, double d, double t) {
    double u = 1 - t;
    return u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * d;
  }

  /**
   * Draws it.
   *
   * @param thick how much thicker it is in the middle than at the ends
   */
  void draw(Canvas canvas, Kind kind, double thick) {
    // A cubic curve reaches three quarters of the distance to its control points.
    double half = thick / 2 / 0.75;
    canvas.path(
        Style.CURVE,
        "M%sC%s %s %sC%s %s %sz"
            .formatted(
                Canvas.point(x0, y0),
                control0(half),
                control1(half),
                Canvas.point(x1, y1),
                control1(-half),
                control0(-half),
                Canvas.point(x0, y0)));
    int pieces = Math.max(16, Math.min(MOST_BOXES, (int) ((x1 - x0) * 5)));
    for (int i = 0; i < pieces; i++) {
      double a = (double) i / pieces;
      double b = (i + 1.0) / pieces;
      double m = (a + b) / 2;
      double top = Math.min(Math.min(y(a), y(b)), y(m));
      double bottom = Math.max(Math.max(y(a), y(b)), y(m));
      canvas.ink(kind, new Box(x(a), top - 0.11, Math.max(x(a), x(b)), bottom + 0.11));
    }
  }

  private String control0(double out) {
    return Canvas.point(
        x0 + (x1 - x0) * reach + lean(), y0 + (y1 - y0) * reach - bend - Math.signum(bend) * out);
  }

  private String control1(double out) {
    return Canvas.point(
        x1 - (x1 - x0) * reach + lean(), y1 - (y1 - y0) * reach - bend - Math.signum(bend) * out);
  }
}
