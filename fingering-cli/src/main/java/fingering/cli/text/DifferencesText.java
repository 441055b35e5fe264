package fingering.cli.text;

import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.music.Measure;
import fingering.page.MeasureFingers;
import fingering.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/** Measures in which plans differ, with the fingers of each beside the others. */
final class DifferencesText {
  private static final int GAP = 2;
  private static final int NARROWEST = 12;

  private DifferencesText() {}

  /**
   * A plan with its heading.
   *
   * @param name the heading
   */
  record Column(String name, Plan plan) {}

  /**
   * Returns the lines.
   *
   * @param measures the measures in which the plans differ
   * @param most the most measures to list
   */
  static List<String> of(
      List<Column> plans, List<Measure> measures, int most, int width, TextStyle style) {
    List<Measure> listed = measures.subList(0, Math.min(most, measures.size()));
    int label = listed.stream().mapToInt(m -> label(m).length()).max().orElse(0) + GAP;
    int cell = Math.max(NARROWEST, (width - label - GAP * (plans.size() - 1)) / plans.size());
    List<String> lines = new ArrayList<>();
    lines.add(
        style.bold(
            row("", label, plans.stream().map(plan -> List.of(plan.name())).toList(), cell, 0)));
    List<MeasureFingers> fingers =
        plans.stream().map(plan -> new MeasureFingers(plan.plan())).toList();
    for (Measure measure : listed) {
      List<List<String>> cells =
          fingers.stream().map(plan -> TextLayout.wrap(plan.in(measure), cell, 0)).toList();
      int height = cells.stream().mapToInt(List::size).max().orElse(1);
      for (int i = 0; i < height; i++) {
        lines.add(row(i == 0 ? label(measure) : "", label, cells, cell, i));
      }
    }
    int more = measures.size() - listed.size();
    if (more > 0) {
      lines.add("and " + more + (more == 1 ? " more measure" : " more measures"));
    }
    return lines;
  }

  private static String row(
      String label, int labelWidth, List<List<String>> cells, int width, int line) {
    StringBuilder row = new StringBuilder(TextLayout.pad(label, labelWidth));
    for (List<String> cell : cells) {
      row.append(TextLayout.pad(line < cell.size() ? cell.get(line) : "", width + GAP));
    }
    return row.toString().stripTrailing();
  }

  private static String label(Measure measure) {
    return "m. " + measure.number();
  }
}
