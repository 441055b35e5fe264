package fingering.cli.text;

import fingering.cli.student.ScoringContext;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.music.Measure;
import fingering.music.Passage;
import java.util.ArrayList;
import java.util.List;

/** The heading above the notes: title, instrument, measures, preset and assumptions. */
public final class HeadingText {
  private HeadingText() {}

  /** The title of the music, or the name of the part if it has none. */
  public static String title(Passage passage) {
    return passage.title().isBlank() ? passage.partName() : passage.title();
  }

  /** The instrument, the measures and the tempo: {@code Viola, m. 0–32, quarter = 96}. */
  public static String music(Passage passage) {
    List<Measure> measures = passage.measures();
    String from = measures.get(0).number();
    String to = measures.get(measures.size() - 1).number();
    return "%s, m. %s, %s"
        .formatted(
            passage.instrument().name(),
            from.equals(to) ? from : from + "–" + to,
            TempoText.mark(passage.tempo()));
  }

  /** The lines, with an empty line at the end. */
  static List<String> of(Passage passage, ScoringContext scoring, int columns, TextStyle style) {
    List<String> lines = new ArrayList<>();
    lines.add(style.bold(title(passage)));
    List<Measure> measures = passage.measures();
    lines.add(
        passage.instrument().name()
            + ", "
            + span(measures.get(0).number(), measures.get(measures.size() - 1).number())
            + ", "
            + passage.notes().size()
            + (passage.notes().size() == 1 ? " note, " : " notes, ")
            + passage.tempo().toString().replace("=", " = "));
    lines.addAll(TextLayout.wrap(scoring.line(), columns, 2));
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
