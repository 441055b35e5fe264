package fingering.page;

import fingering.page.staff.Strip;
import fingering.page.staff.Strip.Piece;
import fingering.svg.Svg;

/**
 * The strip of music in a page. Its pieces wrap like words. Each carries clef, key and positions to
 * its left, hidden by the piece before it. Only the first piece of a row shows them, so every row
 * begins like a staff, at any width and without a script.
 */
final class StripHtml {
  private static final String HATCH =
      "<pattern id=\"hatch\" width=\"5\" height=\"5\" patternUnits=\"userSpaceOnUse\""
          + " patternTransform=\"rotate(45)\"><path class=\"hatch\" d=\"M0 0V5\"/></pattern>";

  private StripHtml() {}

  static String of(Strip strip) {
    return shapes(strip) + rows(strip, "");
  }

  /** The shapes that all strips of a page share. */
  static String shapes(Strip strip) {
    return defs(strip.shapes() + HATCH);
  }

  private static String defs(String shapes) {
    return "<svg class=\"defs\" width=\"0\" height=\"0\" aria-hidden=\"true\"><defs>"
        + shapes
        + "</defs></svg>\n";
  }

  /**
   * The music of one of several strips.
   *
   * @param prefix the beginning of the ids of its measures
   */
  static String rows(Strip strip, String prefix) {
    StringBuilder html = new StringBuilder();
    html.append(defs(strip.heads()))
        .append("<div class=\"strip\" style=\"padding-left:")
        .append(strip.margin())
        .append("px\">\n");
    int order = strip.pieces().size();
    for (Piece piece : strip.pieces()) {
      html.append("<div class=\"piece\" style=\"z-index:").append(order--).append('"');
      if (piece.first()) {
        html.append(" id=\"").append(prefix).append(MeasureLinks.id(piece.measure())).append('"');
      }
      html.append(
          "><svg role=\"img\" width=\"%d\" height=\"%d\"><title>%s</title>%s%s</svg></div>\n"
              .formatted(
                  piece.width(),
                  strip.height(),
                  Svg.escaped(piece.words()),
                  piece.head(),
                  piece.body()));
    }
    return html.append("</div>\n").toString();
  }
}
