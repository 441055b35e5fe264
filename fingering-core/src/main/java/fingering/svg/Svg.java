package fingering.svg;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Builds an SVG picture from elements. Lengths are in pixels, y grows downward. */
public final class Svg {
  private static final String PATH_END = "\"/>";

  private final StringBuilder text = new StringBuilder();

  /** The style of the last path, and where its text ends. */
  private String pathStyle = "";

  private int pathEnd;

  /** Escapes text for XML and HTML. */
  public static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  /** A number rounded to some decimals, without trailing zeros. */
  public static String number(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** A length to a tenth of a pixel, in the shortest form: {@code 12}, {@code -.5}. */
  public static String number(double value) {
    long tenths = Math.round(value * 10);
    long whole = Math.abs(tenths / 10);
    long rest = Math.abs(tenths % 10);
    return (tenths < 0 ? "-" : "")
        + (whole > 0 || rest == 0 ? Long.toString(whole) : "")
        + (rest > 0 ? "." + rest : "");
  }

  /** A pattern of slanted lines, whose id is also the name of their style. */
  public static String hatching(String id) {
    return "<pattern id=\"%s\" width=\"5\" height=\"5\" patternUnits=\"userSpaceOnUse\""
            .formatted(id)
        + " patternTransform=\"rotate(45)\">"
        + new Svg().path(id, "M0 0V5")
        + "</pattern>";
  }

  /** Adds elements that are SVG already. */
  public Svg raw(String elements) {
    text.append(elements);
    return this;
  }

  /** Adds a straight line. */
  public Svg line(String style, double x1, double y1, double x2, double y2) {
    String end = x1 == x2 ? "V" + number(y2) : y1 == y2 ? "H" + number(x2) : "L" + point(x2, y2);
    return path(style, "M" + point(x1, y1) + end);
  }

  /**
   * Adds a path. Successive paths of the same style are merged, because long music has thousands.
   *
   * @param commands the path commands, beginning with a move
   */
  public Svg path(String style, String commands) {
    if (pathEnd == text.length() && pathStyle.equals(style)) {
      text.setLength(pathEnd - PATH_END.length());
      text.append(commands).append(PATH_END);
    } else {
      raw("<path class=\"" + style + "\" d=\"" + commands + PATH_END);
    }
    pathStyle = style;
    pathEnd = text.length();
    return this;
  }

  /** Adds a rectangle. */
  public Svg rect(String style, double x, double y, double width, double height) {
    return raw(
        "<rect class=\"%s\" x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\"/>"
            .formatted(style, number(x), number(y), number(width), number(height)));
  }

  /** Adds a circle. */
  public Svg circle(String style, double x, double y, double radius) {
    return raw(
        "<circle class=\"%s\" cx=\"%s\" cy=\"%s\" r=\"%s\"/>"
            .formatted(style, number(x), number(y), number(radius)));
  }

  /** Adds a text with its baseline at y, anchored at x according to its style. */
  public Svg text(String style, double x, double y, String words) {
    return raw(
        "<text class=\"%s\" x=\"%s\" y=\"%s\">%s</text>"
            .formatted(style, number(x), number(y), escaped(words)));
  }

  /**
   * Adds a text that is set to an exact width in any typeface, from its left edge.
   *
   * @param width in the unit of the picture
   */
  public Svg text(String style, double x, double y, double width, String words) {
    return raw(
        "<text class=\"%s\" x=\"%s\" y=\"%s\" textLength=\"%s\" lengthAdjust=\"spacingAndGlyphs\">%s</text>"
            .formatted(style, number(x), number(y), number(width), escaped(words)));
  }

  /** Adds a shape defined elsewhere, moved to a point. */
  public Svg use(String id, double x, double y) {
    return raw("<use href=\"#%s\" x=\"%s\" y=\"%s\"/>".formatted(id, number(x), number(y)));
  }

  /** Adds a shape defined elsewhere, moved to a point and scaled. */
  public Svg use(String id, double x, double y, double scale) {
    return scale == 1
        ? use(id, x, y)
        : raw(
            "<use href=\"#%s\" transform=\"translate(%s,%s) scale(%s)\"/>"
                .formatted(id, number(x), number(y), scale));
  }

  /** Adds elements that are SVG already, moved. */
  public Svg group(double x, double y, String elements) {
    return raw("<g transform=\"translate(%s,%s)\">".formatted(number(x), number(y)))
        .raw(elements)
        .raw("</g>\n");
  }

  /**
   * All elements as a picture in a page.
   *
   * @param style the style of the picture
   * @param title what it shows
   * @param description what is in it, for those who do not see it
   */
  public String picture(String style, int width, int height, String title, String description) {
    return "<svg class=\"%s\" role=\"img\" viewBox=\"0 0 %d %d\" width=\"%d\" height=\"%d\">"
            .formatted(style, width, height, width, height)
        + "<title>"
        + escaped(title)
        + "</title><desc>"
        + escaped(description)
        + "</desc>"
        + text
        + "</svg>\n";
  }

  /**
   * All elements as a file of its own.
   *
   * @param style the style of the picture
   * @param margin pixels to the left and the right
   * @param sheet the style sheet
   * @param shapes the shapes that the elements use
   */
  public String file(
      String style,
      int width,
      int height,
      int margin,
      String title,
      String description,
      String sheet,
      String shapes) {
    int wide = width + 2 * margin;
    return """
        <svg xmlns="http://www.w3.org/2000/svg" class="%s" role="img" aria-labelledby="title desc" width="%d" height="%d" viewBox="%d 0 %d %d">
        <title id="title">%s</title>
        <desc id="desc">%s</desc>
        <style>%s</style>
        <rect class="paper" x="%d" width="100%%" height="100%%"/>
        <defs>%s</defs>
        """
            .formatted(
                style,
                wide,
                height,
                -margin,
                wide,
                height,
                escaped(title),
                escaped(description),
                sheet,
                -margin,
                shapes)
        + text
        + "\n</svg>\n";
  }

  /** A point in path syntax. */
  public static String point(double x, double y) {
    String second = number(y);
    return number(x) + (second.startsWith("-") ? "" : " ") + second;
  }

  /** Returns all elements so far. */
  @Override
  public String toString() {
    return text.toString();
  }
}
