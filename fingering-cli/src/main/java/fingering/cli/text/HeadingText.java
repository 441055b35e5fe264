package fingering.cli.text;

import fingering.cli.student.ScoringContext;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.music.Measure;
import fingering.music.Passage;
import java.util.ArrayList;
import java.util.List;

/** Above the notes: what is planned, for which instrument, and what was assumed. */
final class HeadingText {
  private HeadingText() {}

  /** The lines, the last of them empty. */
  static List<String> of(Passage passage, ScoringContext charging, int columns, TextStyle style) {
    List<String> lines = new ArrayList<>();
    lines.add(style.bold(passage.title().isBlank() ? passage.partName() : passage.title()));
    List<Measure> measures = passage.measures();
    lines.add(
        passage.instrument().name()
            + ", "
            + span(measures.get(0).number(), measures.get(measures.size() - 1).number())
            + ", "
            + passage.notes().size()
            + " notes, "
            + passage.tempo().toString().replace("=", " = "));
    lines.addAll(TextLayout.wrap(charging.line(), columns, 2));
    for (String remark : passage.remarks()) {
      lines.addAll(TextLayout.wrap("Note: " + remark, columns, 2));
    }
    lines.add("");
    return lines;
  }

  private static String span(String from, String to) {
    return from.equals(to) ? "measure " + from : "measures " + from + "–" + to;
  }
}
