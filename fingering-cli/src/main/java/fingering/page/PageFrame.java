package fingering.page;

import com.google.common.collect.ImmutableMap;
import fingering.svg.Svg;
import java.util.List;

/** The frame of every page: head, links to its sections, and the warning at the end. */
final class PageFrame {
  private final StringBuilder html = new StringBuilder();

  /**
   * A link for keyboard users that skips the heading.
   *
   * @param text the text of the link
   * @param section the id of the section to go to
   */
  record SkipLink(String text, String section) {}

  /**
   * Begins a page.
   *
   * @param styles the style sheet
   * @param sections the headings of the sections to come, by their ids
   */
  PageFrame(
      String title,
      List<String> heading,
      String styles,
      SkipLink skip,
      ImmutableMap<String, String> sections) {
    html.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
        .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
        .append("<meta name=\"color-scheme\" content=\"light dark\">\n<title>")
        .append(Svg.escaped(title))
        .append("</title>\n<style>\n")
        .append(styles)
        .append("</style>\n</head>\n<body>\n<a class=\"skip\" href=\"#")
        .append(skip.section())
        .append("\">")
        .append(skip.text())
        .append("</a>\n<header>\n<h1>")
        .append(Svg.escaped(title))
        .append("</h1>\n");
    heading.forEach(line -> paragraph("lead", line));
    html.append("<nav aria-label=\"On this page\"><ul>");
    sections.forEach(
        (id, name) ->
            html.append("<li><a href=\"#%s\">%s</a></li>".formatted(id, Svg.escaped(name))));
    html.append("</ul></nav>\n</header>\n<main>\n");
  }

  void section(String id, String heading) {
    html.append(
        "<section id=\"%s\" aria-labelledby=\"%s-h\"><h2 id=\"%s-h\">%s</h2>\n"
            .formatted(id, id, id, Svg.escaped(heading)));
  }

  void endSection() {
    html.append("</section>\n");
  }

  void heading(String text) {
    html.append("<h3>").append(Svg.escaped(text)).append("</h3>\n");
  }

  void paragraph(String style, String text) {
    html.append("<p class=\"%s\">%s</p>\n".formatted(style, Svg.escaped(text)));
  }

  void list(List<String> lines) {
    html.append("<ul>");
    lines.forEach(line -> html.append("<li>").append(Svg.escaped(line)).append("</li>"));
    html.append("</ul>\n");
  }

  /** Adds elements that are HTML already. */
  PageFrame raw(String elements) {
    html.append(elements);
    return this;
  }

  /**
   * Returns the HTML so far, and continues with empty text: for pages that are printed in parts.
   */
  String take() {
    String part = html.toString();
    html.setLength(0);
    return part;
  }

  /** Ends the page with a warning, and returns its HTML. */
  String end(String care) {
    html.append("</main>\n<footer>");
    paragraph("care", care);
    return html.append("</footer>\n</body>\n</html>\n").toString();
  }
}
