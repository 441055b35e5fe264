package fingering.page.svg;

import java.util.Locale;

/** Builds a picture, element after element. Lengths are in pixels, y grows downward. */
public final class Svg {
  private final StringBuilder text = new StringBuilder();

  /** Text that stands for itself in XML and HTML. */
  public static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  /** A length to a tenth of a pixel, without needless zeros. */
  public static String number(double value) {
    long tenths = Math.round(value * 10);
    return tenths % 10 == 0
        ? Long.toString(tenths / 10)
        : String.format(Locale.ROOT, "%.1f", tenths / 10.0);
  }

  /** Anything, as it is. */
  public Svg raw(String elements) {
    text.append(elements);
    return this;
  }

  /** A straight line. */
  public Svg line(String style, double x1, double y1, double x2, double y2) {
    return path(style, "M" + point(x1, y1) + "L" + point(x2, y2));
  }

  /** A path. */
  public Svg path(String style, String commands) {
    return raw("<path class=\"" + style + "\" d=\"" + commands + "\"/>");
  }

  /** A rectangle. */
  public Svg rect(String style, double x, double y, double width, double height) {
    return raw(
        "<rect class=\"%s\" x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\"/>"
            .formatted(style, number(x), number(y), number(width), number(height)));
  }

  /** A rectangle with round corners. */
  public Svg box(String style, double x, double y, double width, double height) {
    return raw(
        "<rect class=\"%s\" x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" rx=\"3\"/>"
            .formatted(style, number(x), number(y), number(width), number(height)));
  }

  /** A circle. */
  public Svg circle(String style, double x, double y, double radius) {
    return raw(
        "<circle class=\"%s\" cx=\"%s\" cy=\"%s\" r=\"%s\"/>"
            .formatted(style, number(x), number(y), number(radius)));
  }

  /** A text whose baseline begins at a point, or lies as its style says. */
  public Svg text(String style, double x, double y, String words) {
    return raw(
        "<text class=\"%s\" x=\"%s\" y=\"%s\">%s</text>"
            .formatted(style, number(x), number(y), escaped(words)));
  }

  /** A shape defined elsewhere, moved to a point. */
  public Svg use(String id, double x, double y) {
    return raw("<use href=\"#%s\" x=\"%s\" y=\"%s\"/>".formatted(id, number(x), number(y)));
  }

  /** Two numbers as a path has them. */
  public static String point(double x, double y) {
    return number(x) + " " + number(y);
  }

  /** All elements so far. */
  @Override
  public String toString() {
    return text.toString();
  }
}
