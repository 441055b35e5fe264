package fingering.cli.text;

import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.plan.Plan;
import fingering.tempo.ComfortableTempo;
import fingering.tempo.PlayerSpeed;
import fingering.verdict.PlanFigures;
import java.util.ArrayList;
import java.util.List;

/** A line for each plan: what hand and bow do, and the comfortable tempo. */
final class PlanTable {
  private static final int NAME = 17;
  private static final int SHIFTS = 7;
  private static final int CROSSINGS = 11;
  private static final int FOURTH = 13;

  private PlanTable() {}

  /**
   * A plan for a player.
   *
   * @param name what the line begins with
   */
  record Row(String name, Plan plan, PlayerSpeed speed) {}

  /**
   * Returns the lines.
   *
   * @param heading the heading of the names
   */
  static List<String> of(String heading, List<Row> rows, TextStyle style) {
    int name =
        Math.max(NAME, rows.stream().mapToInt(row -> row.name().length() + 2).max().orElse(0));
    List<String> lines = new ArrayList<>();
    lines.add(
        style.bold(line(name, heading, "shifts", "crossings", "4th fingers", "comfortable up to")));
    for (Row row : rows) {
      PlanFigures figures = PlanFigures.of(row.plan());
      lines.add(
          line(
              name,
              row.name(),
              Integer.toString(figures.shifts()),
              Integer.toString(figures.crossings()),
              Integer.toString(figures.fourthFingers()),
              tempo(ComfortableTempo.of(row.plan(), row.speed()))));
    }
    return lines;
  }

  private static String line(
      int width, String name, String shifts, String crossings, String fourth, String tempo) {
    return TextLayout.pad(name, width)
        + TextLayout.padLeft(shifts, SHIFTS)
        + TextLayout.padLeft(crossings, CROSSINGS)
        + TextLayout.padLeft(fourth, FOURTH)
        + "  "
        + tempo;
  }

  private static String tempo(ComfortableTempo tempo) {
    return tempo.wellAbove()
        ? TempoText.wellAbove(tempo.marked())
        : tempo.tempo().map(TempoText::mark).orElse("any tempo");
  }
}
