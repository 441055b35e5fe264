package fingering.cli.text;

import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.music.Measure;
import fingering.page.MeasureFingers;
import fingering.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/** All fingers of a plan, measure by measure, several measures to a line. */
final class FingersText {
  private static final int MOST = 24;

  private FingersText() {}

  static List<String> of(Plan plan, int columns, TextStyle style) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    boolean more = false;
    MeasureFingers cells = new MeasureFingers(plan);
    for (Measure measure : plan.passage().measures()) {
      String cell = cells.in(measure);
      if (cell.isEmpty()) {
        continue;
      }
      String text = measure.number() + ": " + cell;
      if (lines.size() >= MOST) {
        more = true;
        break;
      }
      if (line.length() > 0 && line.length() + 3 + text.length() > columns) {
        lines.add(line.toString());
        line = new StringBuilder(text);
      } else {
        line.append(line.length() > 0 ? " | " : "").append(text);
      }
    }
    if (lines.size() < MOST) {
      lines.add(line.toString());
    } else {
      more = true;
    }
    List<String> wrapped = new ArrayList<>();
    wrapped.add(style.bold("Measure: string, finger; ↑ ↓ shift to a position"));
    lines.forEach(each -> wrapped.addAll(TextLayout.wrap(each, columns, 4)));
    if (more) {
      wrapped.add("and more; --notes shows every note");
    }
    return wrapped;
  }
}
