package fingering.page;

import com.google.common.collect.ImmutableList;
import fingering.music.Passage;
import fingering.page.staff.Engraver;
import fingering.page.staff.Lane;
import fingering.page.svg.Svg;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.practice.Circles;
import java.util.ArrayList;
import java.util.List;

/**
 * Plans as a page in HTML that stands alone: no script, no other file, nothing from the network.
 */
public final class PlanPage {
  private final PageContent content;
  private final Engraver engraver;
  private final Comparison comparison;
  private final StringBuilder html = new StringBuilder();

  private PlanPage(PageContent content, Engraver engraver) {
    this.content = content;
    this.engraver = engraver;
    comparison = content.comparison();
  }

  /** The page, its staff drawn by an engraver. */
  public static String of(PageContent content, Engraver engraver) {
    return new PlanPage(content, engraver).page();
  }

  private String page() {
    html.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
        .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
        .append("<meta name=\"color-scheme\" content=\"light dark\">\n<title>")
        .append(Svg.escaped(content.title()))
        .append("</title>\n<style>\n")
        .append(PageStyle.sheet())
        .append("</style>\n</head>\n<body>\n")
        .append("<a class=\"skip\" href=\"#music\">To the music</a>\n<header>\n<h1>")
        .append(Svg.escaped(content.title()))
        .append("</h1>\n");
    content.heading().forEach(line -> paragraph("lead", line));
    html.append("<nav aria-label=\"On this page\"><ul>")
        .append("<li><a href=\"#music\">The music</a></li>")
        .append("<li><a href=\"#buys\">What each plan buys</a></li>")
        .append("<li><a href=\"#write\">What to write into the part</a></li>")
        .append("<li><a href=\"#hand\">The hand over time</a></li>")
        .append("<li><a href=\"#board\">The fingerboard</a></li>")
        .append("<li><a href=\"#costs\">Costs</a></li></ul></nav>\n</header>\n<main>\n");
    music();
    buys();
    write();
    hand();
    board();
    costs();
    html.append("</main>\n<footer>");
    paragraph("care", content.care());
    return html.append("</footer>\n</body>\n</html>\n").toString();
  }

  private void section(String id, String heading) {
    html.append(
        "<section id=\"%s\" aria-labelledby=\"%s-h\"><h2 id=\"%s-h\">%s</h2>\n"
            .formatted(id, id, id, heading));
  }

  private void endSection() {
    html.append("</section>\n");
  }

  private void paragraph(String style, String text) {
    html.append("<p class=\"%s\">%s</p>\n".formatted(style, Svg.escaped(text)));
  }

  private void list(List<String> lines) {
    html.append("<ul>");
    lines.forEach(line -> html.append("<li>").append(Svg.escaped(line)).append("</li>"));
    html.append("</ul>\n");
  }

  private void music() {
    ImmutableList<Lane> lanes = Lanes.of(comparison);
    Passage passage = comparison.passage();
    section("music", "The music");
    list(StripSvg.legend(lanes));
    html.append(StripHtml.of(engraver.engrave(passage, content.printed(), lanes)));
    endSection();
  }

  private void buys() {
    section("buys", "What each plan buys and costs");
    list(content.buys());
    html.append("<h3>").append(Svg.escaped(content.tempoHeading())).append("</h3>\n");
    list(content.tempi());
    if (!content.demands().isEmpty()) {
      html.append("<h3>What was demanded</h3>\n");
      demands();
    }
    strain();
    paragraph("care", content.care());
    endSection();
  }

  private void strain() {
    StringBuilder lines = new StringBuilder();
    for (int i = 0; i < comparison.plans().size(); i++) {
      lines.append(Strain.html(comparison.plans().get(i), Lanes.key(i)));
    }
    if (lines.length() > 0) {
      html.append("<h3>Where to spare the hand</h3>\n<ul>").append(lines).append("</ul>\n");
    }
  }

  /** A list for each plan below the line that names it, which ends with a colon. */
  private void demands() {
    List<String> told = new ArrayList<>();
    for (String line : content.demands()) {
      if (line.endsWith(":")) {
        if (!told.isEmpty()) {
          list(told);
        }
        told.clear();
        paragraph("note", line);
      } else {
        told.add(line);
      }
    }
    list(told);
  }

  private void write() {
    section("write", "What to write into the part");
    html.append(ToCircle.html(Circles.of(comparison.passage(), content.printed()), true));
    for (int i = 0; i < comparison.plans().size(); i++) {
      html.append(new WriteDown(comparison.plans().get(i)).shifts(Lanes.key(i)));
    }
    endSection();
  }

  private void hand() {
    HandGraph graph = new HandGraph(comparison);
    section("hand", "The hand over time");
    paragraph(
        "note",
        "The line shows where the hand stands: the position, and how many millimetres from the nut"
            + " its first finger lies at rest. Arrows are shifts. Below it each note lies on its"
            + " string, and a line from string to string is a crossing of the bow. At the foot"
            + " the points of each measure"
            + bars(comparison.plans().size())
            + "."
            + (graph.shades() ? " Hatched is where the plan shows what it has to show." : ""));
    html.append(graph.html());
    endSection();
  }

  /** How the bars of plans are told apart, in the order in which they stand. */
  private static String bars(int plans) {
    return switch (plans) {
      case 1 -> "";
      case 2 -> ": A filled, B hatched";
      case 3 -> ": A filled, B hatched, C open";
      default -> ", the plans in their order";
    };
  }

  private void board() {
    section("board", "The fingerboard");
    paragraph(
        "note",
        "The places that each plan uses, seen from above with the nut at the left; the larger, the"
            + " more often. Rings left of the nut are open strings.");
    double furthest =
        comparison.plans().stream().mapToDouble(BoardPicture::furthest).max().orElse(1);
    html.append("<div class=\"panels\">\n");
    for (int i = 0; i < comparison.plans().size(); i++) {
      Plan plan = comparison.plans().get(i);
      html.append(new BoardPicture(plan, Lanes.key(i), furthest).svg());
    }
    html.append("</div>\n");
    endSection();
  }

  private void costs() {
    Costs costs = new Costs(comparison);
    section("costs", "Costs");
    html.append("<div class=\"tables\">\n<div>").append(costs.hardest()).append(costs.counts());
    html.append("</div>\n<div>").append(costs.byRule()).append("</div>\n</div>\n");
    html.append(costs.explained());
    endSection();
  }
}
