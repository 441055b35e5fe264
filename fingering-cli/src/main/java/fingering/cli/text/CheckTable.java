package fingering.cli.text;

import fingering.check.CheckTally;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.playability.PartCheck;
import fingering.playability.ScoreCheck;
import fingering.playability.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Tables of parts and of scores with the numbers of their findings. */
final class CheckTable {
  private static final String COUNTS = "  Unplayable  Risky  Worth knowing";
  private static final String GRADE = "  Difficulty";

  private final int columns;
  private final TextStyle style;

  CheckTable(int columns, TextStyle style) {
    this.columns = columns;
    this.style = style;
  }

  /** A row for each part. */
  List<String> parts(ScoreCheck check) {
    int width = width("Part", check.parts().stream().map(part -> part.part().toString()).toList());
    List<String> lines = new ArrayList<>();
    lines.add(style.dim(TextLayout.pad("Part", width) + GRADE + COUNTS));
    for (PartCheck part : check.parts()) {
      lines.add(
          fitted(part.part().toString(), width)
              + TextLayout.padLeft(Integer.toString(part.difficulty().grade()), GRADE.length())
              + counts(CheckTally.counts(part)));
    }
    return lines;
  }

  /** A row for each score, and the totals. */
  List<String> scores(CheckTally tally) {
    int width = width("Score", tally.lines().stream().map(CheckTally.Line::name).toList());
    List<String> lines = new ArrayList<>();
    lines.add(style.bold("All scores"));
    lines.add(style.dim(TextLayout.pad("Score", width) + GRADE + COUNTS));
    for (CheckTally.Line line : tally.lines()) {
      lines.add(
          fitted(line.name(), width)
              + TextLayout.padLeft(grade(line.hardest()), GRADE.length())
              + counts(line.counts()));
    }
    lines.add(
        style.bold(
            TextLayout.pad("Total", width) + " ".repeat(GRADE.length()) + counts(tally.total())));
    lines.add("Difficulty is that of the hardest part.");
    return lines;
  }

  private static String grade(Optional<CheckTally.Hardest> hardest) {
    return hardest.map(part -> Integer.toString(part.grade())).orElse("–");
  }

  private int width(String head, List<String> names) {
    int longest = names.stream().mapToInt(String::length).max().orElse(0);
    return Math.max(head.length(), Math.min(longest, columns - GRADE.length() - COUNTS.length()));
  }

  /** Shortens a name at its beginning, which is often a folder that all have in common. */
  private static String fitted(String name, int width) {
    return TextLayout.pad(
        name.length() <= width ? name : "…" + name.substring(name.length() - width + 1), width);
  }

  private static String counts(Map<Severity, Integer> counts) {
    StringBuilder cells = new StringBuilder();
    counts.forEach(
        (severity, count) ->
            cells.append(
                TextLayout.padLeft(
                    count == 0 ? "–" : Integer.toString(count), severity.label().length() + 2)));
    return cells.toString();
  }
}
