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
  private static final int NUMBER = 11;

  private PlanTable() {}

  static List<String> of(List<Plan> plans, PlayerSpeed speed, TextStyle style) {
    List<String> lines = new ArrayList<>();
    int name =
        Math.max(
            NAME, plans.stream().mapToInt(plan -> plan.name().length() + 2).max().orElse(NAME));
    lines.add(
        style.bold(
            TextLayout.pad("Plan", name)
                + TextLayout.padLeft("shifts", NUMBER - 4)
                + TextLayout.padLeft("crossings", NUMBER)
                + TextLayout.padLeft("4th fingers", NUMBER + 2)
                + "  comfortable up to"));
    for (Plan plan : plans) {
      PlanFigures figures = PlanFigures.of(plan);
      lines.add(
          TextLayout.pad(plan.name(), name)
              + TextLayout.padLeft(Integer.toString(figures.shifts()), NUMBER - 4)
              + TextLayout.padLeft(Integer.toString(figures.crossings()), NUMBER)
              + TextLayout.padLeft(Integer.toString(figures.fourthFingers()), NUMBER + 2)
              + "  "
              + tempo(ComfortableTempo.of(plan, speed)));
    }
    return lines;
  }

  private static String tempo(ComfortableTempo tempo) {
    return tempo.wellAbove()
        ? TempoText.wellAbove(tempo.marked())
        : tempo.tempo().map(TempoText::mark).orElse("any tempo");
  }
}
