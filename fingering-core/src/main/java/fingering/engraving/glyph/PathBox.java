package fingering.engraving.glyph;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The box around a path of lines and cubic curves. Curves are measured at their extrema, so the box
 * touches the shape on all four sides.
 *
 * <p>Reads the part of SVG's path data that the table of shapes uses: M, L, H, V, C and Z with
 * absolute coordinates.
 */
final class PathBox {
  private static final Pattern NUMBER = Pattern.compile("-?(?:\\d+(?:\\.\\d*)?|\\.\\d+)");

  private final String path;
  private final Matcher matcher;
  private int at;
  private double startX;
  private double startY;
  private double x;
  private double y;
  private double left = Double.POSITIVE_INFINITY;
  private double top = Double.POSITIVE_INFINITY;
  private double right = Double.NEGATIVE_INFINITY;
  private double bottom = Double.NEGATIVE_INFINITY;

  private PathBox(String path) {
    this.path = path;
    this.matcher = NUMBER.matcher(path);
  }

  /**
   * The box around a path.
   *
   * @throws IllegalArgumentException if the path is empty, does not start with M, or has anything
   *     but the commands above and their numbers
   */
  static Box of(String path) {
    return new PathBox(path).read();
  }

  private Box read() {
    skipGap();
    if (at == path.length() || path.charAt(at) != 'M') {
      throw new IllegalArgumentException("a path starts with M");
    }
    while (at < path.length()) {
      char command = path.charAt(at++);
      if (command == 'Z') {
        x = startX;
        y = startY;
        skipGap();
        continue;
      }
      do {
        draw(command);
        skipGap();
      } while (at < path.length() && matcher.region(at, path.length()).lookingAt());
    }
    return new Box(left, top, right, bottom);
  }

  private void draw(char command) {
    switch (command) {
      case 'M' -> {
        moveTo(number(), number());
        startX = x;
        startY = y;
      }
      case 'L' -> moveTo(number(), number());
      case 'H' -> moveTo(number(), y);
      case 'V' -> moveTo(x, number());
      case 'C' -> curveTo(number(), number(), number(), number(), number(), number());
      default -> throw new IllegalArgumentException("'" + command + "' at " + at + " of a path");
    }
  }

  private void moveTo(double toX, double toY) {
    x = toX;
    y = toY;
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }

  private void curveTo(double x1, double y1, double x2, double y2, double toX, double toY) {
    double fromX = x;
    double fromY = y;
    for (double t : extrema(fromX, x1, x2, toX)) {
      double extreme = cubic(fromX, x1, x2, toX, t);
      left = Math.min(left, extreme);
      right = Math.max(right, extreme);
    }
    for (double t : extrema(fromY, y1, y2, toY)) {
      double extreme = cubic(fromY, y1, y2, toY, t);
      top = Math.min(top, extreme);
      bottom = Math.max(bottom, extreme);
    }
    moveTo(toX, toY);
  }

  /** The parameters where a cubic turns; 0, its start, where it does not. */
  private static double[] extrema(double p0, double p1, double p2, double p3) {
    double a = 3 * (p3 - 3 * p2 + 3 * p1 - p0);
    double b = 6 * (p2 - 2 * p1 + p0);
    double c = 3 * (p1 - p0);
    if (Math.abs(a) < 1e-9) {
      return new double[] {inside(-c / b)};
    }
    double root = Math.sqrt(b * b - 4 * a * c);
    return new double[] {inside((-b + root) / (2 * a)), inside((-b - root) / (2 * a))};
  }

  /** A parameter of the curve, or 0 for one beyond its ends or not a number. */
  private static double inside(double t) {
    return t > 0 && t < 1 ? t : 0;
  }

  private static double cubic(double p0, double p1, double p2, double p3, double t) {
    double s = 1 - t;
    return s * s * s * p0 + 3 * s * s * t * p1 + 3 * s * t * t * p2 + t * t * t * p3;
  }

  private double number() {
    skipGap();
    if (!matcher.region(at, path.length()).lookingAt()) {
      throw new IllegalArgumentException("no number at " + at + " of a path");
    }
    at = matcher.end();
    return Double.parseDouble(matcher.group());
  }

  private void skipGap() {
    while (at < path.length() && (path.charAt(at) == ' ' || path.charAt(at) == ',')) {
      at++;
    }
  }
}
