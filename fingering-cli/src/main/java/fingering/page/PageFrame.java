package fingering.page;

import com.google.common.collect.ImmutableMap;
import fingering.page.svg.Svg;
import java.util.List;

/** What every page has around its content: head, links to its sections, and the caution. */
final class PageFrame {
  private final StringBuilder html = new StringBuilder();

  /**
   * Begins a page.
   *
   * @param skip what the first link, to the first section, is called
   * @param sections the headings of the sections to come, by their ids
   */
  PageFrame(
      String title, List<String> heading, String skip, ImmutableMap<String, String> sections) {
    String first = sections.keySet().iterator().next();
    html.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
        .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
        .append("<meta name=\"color-scheme\" content=\"light dark\">\n<title>")
        .append(Svg.escaped(title))
        .append("</title>\n<style>\n")
        .append(PageStyle.sheet())
        .append("</style>\n</head>\n<body>\n<a class=\"skip\" href=\"#")
        .append(first)
        .append("\">")
        .append(skip)
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

  void heading(String words) {
    html.append("<h3>").append(Svg.escaped(words)).append("</h3>\n");
  }

  void paragraph(String style, String words) {
    html.append("<p class=\"%s\">%s</p>\n".formatted(style, Svg.escaped(words)));
  }

  void list(List<String> lines) {
    html.append("<ul>");
    lines.forEach(line -> html.append("<li>").append(Svg.escaped(line)).append("</li>"));
    html.append("</ul>\n");
  }

  /** Adds what is HTML already. */
  PageFrame raw(String elements) {
    html.append(elements);
    return this;
  }

  /** Ends the page, and returns it. */
  String end(String care) {
    html.append("</main>\n<footer>");
    paragraph("care", care);
    return html.append("</footer>\n</body>\n</html>\n").toString();
  }
}
