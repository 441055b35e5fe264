package fingering.cli.text;

import fingering.cli.student.ScoringContext;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.music.Measure;
import fingering.music.Movements;
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
    return "%s, m. %s, %s"
        .formatted(
            passage.instrument().name(), span(passage.measures()), TempoText.mark(passage.tempo()));
  }

  /** The lines, with an empty line at the end. */
  static List<String> of(Passage passage, ScoringContext scoring, int columns, TextStyle style) {
    List<String> lines = new ArrayList<>();
    lines.add(style.bold(title(passage)));
    lines.add(
        passage.instrument().name()
            + (passage.measures().size() == 1 ? ", measure " : ", measures ")
            + span(passage.measures())
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

  /** {@code 0–32}; of several movements, {@code 0 to 104 of the fourth movement}. */
  private static String span(List<Measure> measures) {
    Measure last = measures.get(measures.size() - 1);
    String from = measures.get(0).number();
    String to = last.number();
    String movement = Movements.of(measures).phrase(last.index());
    return movement.isEmpty()
        ? (from.equals(to) ? from : from + "–" + to)
        : from + " to " + to + movement;
  }
}
