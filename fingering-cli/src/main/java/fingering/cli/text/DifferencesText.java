package fingering.cli.text;

import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.music.Measure;
import fingering.plan.Plan;
import fingering.verdict.Difference;
import java.util.ArrayList;
import java.util.List;

/** The measures in which two plans differ, with the fingers of each beside the other. */
final class DifferencesText {
  private static final int GAP = 2;

  private DifferencesText() {}

  /**
   * Returns the lines.
   *
   * @param most the most measures to list
   */
  static List<String> of(
      Plan left, Plan right, List<Difference> differences, int most, int columns, TextStyle style) {
    List<Measure> measures =
        differences.stream().flatMap(difference -> difference.measures().stream()).toList();
    List<Measure> listed = measures.subList(0, Math.min(most, measures.size()));
    int label = listed.stream().mapToInt(m -> label(m).length()).max().orElse(0) + GAP;
    int cell = (columns - label - GAP) / 2;
    List<String> lines = new ArrayList<>();
    lines.add(
        style.bold(" ".repeat(label) + TextLayout.pad(left.name(), cell + GAP) + right.name()));
    for (Measure measure : listed) {
      List<String> one = TextLayout.wrap(MeasureCells.of(left, measure), cell, 0);
      List<String> other = TextLayout.wrap(MeasureCells.of(right, measure), cell, 0);
      for (int i = 0; i < Math.max(one.size(), other.size()); i++) {
        lines.add(
            (TextLayout.pad(i == 0 ? label(measure) : "", label)
                    + TextLayout.pad(i < one.size() ? one.get(i) : "", cell + GAP)
                    + (i < other.size() ? other.get(i) : ""))
                .stripTrailing());
      }
    }
    int more = measures.size() - listed.size();
    if (more > 0) {
      lines.add(
          "and "
              + more
              + (more == 1 ? " more measure" : " more measures")
              + "; --notes shows every note");
    }
    return lines;
  }

  private static String label(Measure measure) {
    return "m. " + measure.number();
  }
}
