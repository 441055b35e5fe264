package fingering.cli.chart;

import fingering.svg.Svg;
import java.util.Locale;

/** Builds an SVG picture from elements. Lengths are in millimetres. */
public final class SvgPage {
  /** The anchor of a text. */
  public enum Anchor {
    START,
    MIDDLE,
    END
  }

  /** The colour of the fingerboard. */
  static final String WOOD = "#f6f6f6";

  private final StringBuilder body = new StringBuilder();

  /** Escapes text for XML. */
  public static String escaped(String text) {
    return Svg.escaped(text);
  }

  /** A length without trailing zeros. */
  public static String number(double value) {
    return Svg.number(value, 2);
  }

  public void line(double x1, double y1, double x2, double y2, double width, String colour) {
    body.append(
        String.format(
            "  <line x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\" stroke=\"%s\" stroke-width=\"%s\"/>\n",
            number(x1), number(y1), number(x2), number(y2), colour, number(width)));
  }

  void rect(double x, double y, double width, double height, String paint) {
    body.append(
        String.format(
            "  <rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" %s/>\n",
            number(x), number(y), number(width), number(height), paint));
  }

  public void circle(double x, double y, double radius, String paint) {
    body.append(
        String.format(
            "  <circle cx=\"%s\" cy=\"%s\" r=\"%s\" %s/>\n",
            number(x), number(y), number(radius), paint));
  }

  /** Adds a text that is vertically centred on y. */
  public void text(double x, double y, double size, Anchor anchor, boolean bold, String text) {
    text(x, y, size, anchor, bold, "", text);
  }

  /** Adds a text on the fingerboard, with an outline that separates it from lines behind it. */
  void onWood(double x, double y, double size, boolean bold, String text) {
    String outline =
        String.format(
            " stroke=\"%s\" stroke-width=\"%s\" paint-order=\"stroke\"", WOOD, number(0.3 * size));
    text(x, y, size, Anchor.START, bold, outline, text);
  }

  private void text(
      double x, double y, double size, Anchor anchor, boolean bold, String more, String text) {
    // A baseline a third of the size below the middle centres the text in most fonts.
    body.append(
        String.format(
            "  <text x=\"%s\" y=\"%s\" font-size=\"%s\" text-anchor=\"%s\"%s%s>%s</text>\n",
            number(x),
            number(y + size * 0.35),
            number(size),
            anchor.name().toLowerCase(Locale.ROOT),
            bold ? " font-weight=\"bold\"" : "",
            more,
            escaped(text)));
  }

  /**
   * Returns the picture as a document.
   *
   * @param scale pixels per millimetre of the initial size
   */
  public String document(
      double width, double height, double scale, String title, String description) {
    return String.format(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-labelledby=\"title desc\""
                + " viewBox=\"0 0 %s %s\" width=\"%d\" height=\"%d\" font-family=\"sans-serif\""
                + " fill=\"#111\">\n",
            number(width), number(height), Math.round(width * scale), Math.round(height * scale))
        + String.format("  <title id=\"title\">%s</title>\n", escaped(title))
        + String.format("  <desc id=\"desc\">%s</desc>\n", escaped(description))
        + String.format("  <rect width=\"100%%\" height=\"100%%\" fill=\"#fff\"/>\n")
        + body
        + String.format("</svg>\n");
  }
}
