package fingering.page;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.svg.Svg;
import java.util.List;

/** A self-contained HTML page for the practice of a plan. */
public final class PracticePage {
  private final PracticeContent content;
  private final ImmutableMap<String, String> sections;
  private final PageFrame html;

  private PracticePage(PracticeContent content) {
    this.content = content;
    ImmutableMap.Builder<String, String> all = ImmutableMap.builder();
    all.put("today", content.day());
    if (!content.spots().isEmpty()) {
      all.put("spots", "Practice spots: work on these first, slowly");
    }
    all.put("days", "Day by day");
    if (content.progress().isPresent() || !content.journal().isEmpty()) {
      all.put("progress", "From the journal");
    }
    all.put("circle", "What to circle in the part");
    sections = all.buildOrThrow();
    html =
        new PageFrame(
            content.title(),
            content.heading(),
            PageStyle.sheet(),
            new PageFrame.SkipLink("Skip to today", "today"),
            sections);
  }

  /** The page as HTML. */
  public static String of(PracticeContent content) {
    return new PracticePage(content).page();
  }

  private String page() {
    sections.forEach(
        (id, heading) -> {
          html.section(id, heading);
          section(id);
          html.endSection();
        });
    return html.end(content.care());
  }

  private void section(String id) {
    switch (id) {
      case "today" -> html.list(content.today());
      case "spots" -> html.list(content.spots());
      case "days" -> days();
      case "progress" -> progress();
      default -> html.raw(CircleLists.html(content.circles(), false));
    }
  }

  private void progress() {
    content
        .progress()
        .ifPresent(svg -> html.raw("<figure class=\"progress\">").raw(svg).raw("</figure>\n"));
    if (!content.journal().isEmpty()) {
      html.list(content.journal());
    }
  }

  private void days() {
    html.raw("<table class=\"days\"><caption>Tempo ladder</caption><thead><tr>");
    content.columns().forEach(head -> html.raw("<th scope=\"col\">" + Svg.escaped(head) + "</th>"));
    html.raw("</tr></thead><tbody>\n");
    content.rows().forEach(this::day);
    html.raw("</tbody></table>\n");
    html.paragraph("note", content.figures());
    html.paragraph("care", content.care());
  }

  private void day(ImmutableList<String> row) {
    html.raw("<tr><th scope=\"row\">" + Svg.escaped(row.get(0)) + "</th>");
    List<String> cells = row.subList(1, row.size());
    for (int i = 0; i < cells.size(); i++) {
      int missing = content.columns().size() - row.size();
      String wide =
          i + 1 == cells.size() && missing > 0 ? " colspan=\"" + (missing + 1) + "\"" : "";
      html.raw("<td" + wide + ">" + Svg.escaped(cells.get(i)) + "</td>");
    }
    html.raw("</tr>\n");
  }
}
