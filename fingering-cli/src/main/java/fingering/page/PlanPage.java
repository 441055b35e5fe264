package fingering.page;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.Multimaps;
import fingering.music.Passage;
import fingering.page.staff.Engraver;
import fingering.page.staff.Lane;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.practice.CircleFinder;
import java.util.ArrayList;
import java.util.List;

/** A self-contained HTML page of plans: no script, no other file, nothing from the network. */
public final class PlanPage {
  private static final ImmutableMap<String, String> SECTIONS =
      ImmutableMap.<String, String>builder()
          .put("music", "The music")
          .put("summary", "Summary")
          .put("write", "What to write in the part")
          .put("hand", "The hand over time")
          .put("board", "The fingerboard")
          .put("costs", "Costs")
          .buildOrThrow();

  private final PageContent content;
  private final Engraver engraver;
  private final Comparison comparison;
  private final PageFrame html;

  private PlanPage(PageContent content, Engraver engraver) {
    this.content = content;
    this.engraver = engraver;
    comparison = content.comparison();
    html =
        new PageFrame(
            content.title(),
            ImmutableList.<String>builder()
                .add(String.join(" ", content.verdict()))
                .addAll(content.heading())
                .build(),
            PageStyle.sheet(),
            new PageFrame.SkipLink("Skip to the music", "music"),
            SECTIONS);
  }

  /** The page, with the staff drawn by an engraver. */
  public static String of(PageContent content, Engraver engraver) {
    return new PlanPage(content, engraver).page();
  }

  private String page() {
    music();
    summary();
    write();
    hand();
    board();
    costs();
    return html.end(content.care());
  }

  private void section(String id) {
    html.section(id, SECTIONS.get(id));
  }

  private void music() {
    ImmutableList<Lane> lanes = Lanes.of(comparison);
    Passage passage = comparison.passage();
    section("music");
    html.list(StripSvg.legend(lanes));
    html.raw(StripHtml.of(engraver.engrave(passage, content.printed(), lanes)));
    html.endSection();
  }

  private void summary() {
    section("summary");
    if (!content.summary().isEmpty()) {
      html.list(content.summary());
    }
    Multimaps.asMap(content.notes())
        .forEach(
            (heading, lines) -> {
              html.heading(heading);
              html.list(lines);
            });
    if (!content.demands().isEmpty()) {
      html.heading("Demands");
      demands();
    }
    strain();
    html.paragraph("care", content.care());
    html.endSection();
  }

  private void strain() {
    StringBuilder lines = new StringBuilder();
    for (int i = 0; i < comparison.plans().size(); i++) {
      lines.append(Strain.html(comparison.plans().get(i), i));
    }
    if (lines.length() > 0) {
      html.heading("Stretches and thumb position");
      html.raw("<ul>" + lines + "</ul>\n");
    }
  }

  /** A list for each plan, below the line that names it. That line ends with a colon. */
  private void demands() {
    List<String> lines = new ArrayList<>();
    for (String line : content.demands()) {
      if (line.endsWith(":")) {
        if (!lines.isEmpty()) {
          html.list(lines);
        }
        lines.clear();
        html.paragraph("note", line);
      } else {
        lines.add(line);
      }
    }
    html.list(lines);
  }

  private void write() {
    section("write");
    html.raw(CircleLists.html(CircleFinder.of(comparison.passage(), content.printed()), true));
    for (int i = 0; i < comparison.plans().size(); i++) {
      html.raw(new StudentMarks(comparison.plans().get(i)).shifts(i));
    }
    html.endSection();
  }

  private void hand() {
    HandGraph graph = new HandGraph(comparison);
    section("hand");
    html.paragraph(
        "note",
        "The line shows the position of the hand, and the distance of its relaxed first finger from"
            + " the nut in millimetres. Arrows are shifts. Below it, each note is drawn on its string,"
            + " and a line between two strings is a string crossing. The bars at the bottom are the"
            + " points of each measure"
            + barLegend(comparison.plans().size())
            + "."
            + (graph.shades() ? " Hatched: the plan shows a required skill there." : ""));
    html.raw(graph.html());
    html.endSection();
  }

  /** How the bars of the plans differ, in the order of the plans. */
  private static String barLegend(int plans) {
    return switch (plans) {
      case 1 -> "";
      case 2 -> ": A filled, B hatched";
      case 3 -> ": A filled, B hatched, C outlined";
      default -> ", in the order of the plans";
    };
  }

  private void board() {
    section("board");
    html.paragraph(
        "note",
        "Where each plan puts the fingers, seen from above with the nut at the left. Larger dots are"
            + " used more often. Rings to the left of the nut are open strings.");
    double furthest =
        comparison.plans().stream().mapToDouble(FingerboardPicture::furthest).max().orElse(1);
    html.raw("<div class=\"panels\">\n");
    for (int i = 0; i < comparison.plans().size(); i++) {
      Plan plan = comparison.plans().get(i);
      html.raw(new FingerboardPicture(plan, i, furthest).svg());
    }
    html.raw("</div>\n");
    html.endSection();
  }

  private void costs() {
    CostTables costs = new CostTables(comparison);
    section("costs");
    html.raw("<div class=\"tables\">\n<div>").raw(costs.hardest()).raw(costs.counts());
    html.raw("</div>\n<div>").raw(costs.byRule()).raw("</div>\n</div>\n");
    html.raw(costs.explained());
    html.endSection();
  }
}
