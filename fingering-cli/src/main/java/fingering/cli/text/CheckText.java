package fingering.cli.text;

import fingering.check.CheckReport;
import fingering.check.CheckTally;
import fingering.check.CheckedFile;
import fingering.check.FindingGroup;
import fingering.check.ReportOptions;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.playability.Difficulty;
import fingering.playability.Finding;
import fingering.playability.PartCheck;
import fingering.playability.ScoreCheck;
import fingering.playability.Severity;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** What was found, in words: a table by part, then each part with its findings, gravest first. */
public final class CheckText implements CheckReport {
  /** Sentences told of findings of one kind, unless all are wanted. */
  private static final int TOLD = 3;

  /** Sides of a part that make it hard, as many as its grade counts. */
  private static final int SIDES = 3;

  private final ReportOptions asked;
  private final int told;
  private final int columns;
  private final TextStyle style;
  private final CheckTable tables;
  private final Consumer<String> printing;
  private final StringBuilder text = new StringBuilder();
  private boolean first = true;
  private boolean cut;

  public CheckText(
      ReportOptions asked, boolean all, int columns, TextStyle style, Consumer<String> printing) {
    this.asked = asked;
    told = all ? Integer.MAX_VALUE - 1 : TOLD;
    this.columns = columns;
    this.style = style;
    tables = new CheckTable(columns, style);
    this.printing = printing;
  }

  @Override
  public void begin() {
    // Every score says for itself what it was checked for.
  }

  @Override
  public void add(CheckedFile file) {
    file.check().ifPresent(check -> score(file, check));
    print();
  }

  @Override
  public void end(CheckTally tally) {
    if (!first) {
      line("");
      wrapped("Difficulty, 1 to 10: " + Difficulty.EXPLANATION, 0);
      if (cut) {
        wrapped("Of many findings alike the first are told; --all tells every one.", 0);
      }
    }
    if (tally.lines().size() > 1) {
      line("");
      tables.scores(tally).forEach(this::line);
      if (!tally.refused().isEmpty()) {
        line("");
        line(style.bold("Not checked"));
        tally.refused().forEach(sentence -> wrapped(sentence, 0));
      }
    }
    print();
  }

  private void print() {
    printing.accept(text.toString());
    text.setLength(0);
  }

  private void line(String line) {
    text.append(line).append('\n');
  }

  /** The words from one column on, further lines two columns further in. */
  private void wrapped(String words, int from) {
    TextLayout.wrap(words, columns - from, 2).forEach(line -> line(" ".repeat(from) + line));
  }

  private void score(CheckedFile file, ScoreCheck check) {
    if (!first) {
      line("");
      line("");
    }
    first = false;
    line(style.bold(file.title()));
    wrapped(file.name() + ", checked for players of the level " + check.level().name(), 0);
    check.remarks().forEach(remark -> wrapped("Note: " + remark, 0));
    if (!check.leftOut().isEmpty()) {
      wrapped(
          "Not checked: "
              + check.leftOut().stream().map(part -> part.name()).collect(Collectors.joining(", "))
              + ".",
          0);
    }
    line("");
    tables.parts(check).forEach(this::line);
    check.parts().forEach(this::part);
  }

  private void part(PartCheck part) {
    List<FindingGroup> groups = FindingGroup.of(asked.shown(part));
    if (groups.isEmpty() && part.remarks().isEmpty()) {
      return;
    }
    line("");
    line(
        style.bold(part.part().name())
            + " ("
            + part.instrument().spoken()
            + ", "
            + part.forces().id().replace('-', ' ')
            + "): difficulty "
            + part.difficulty().grade()
            + " of 10");
    part.remarks().forEach(remark -> wrapped("Note: " + remark, 2));
    String sides = sides(part.difficulty());
    if (!sides.isEmpty()) {
      wrapped(sides, 2);
    }
    groups.forEach(this::group);
  }

  /** The sides that count, but for those of the lowest grade. */
  private static String sides(Difficulty difficulty) {
    return difficulty.components().stream()
        .limit(SIDES)
        .filter(side -> Math.round(side.grade()) > 1)
        .map(
            side ->
                side.name()
                    + " "
                    + String.format(Locale.ROOT, "%.0f", side.grade())
                    + " ("
                    + side.amount()
                    + ")")
        .collect(Collectors.joining(", "));
  }

  private void group(FindingGroup group) {
    int count = group.findings().size();
    line(
        "  "
            + severity(group.severity())
            + ": "
            + group.kind().title()
            + (count == 1 ? "" : " (" + count + ")"));
    Optional<String> wayOut = Optional.empty();
    for (FindingGroup.Told one : group.told(told)) {
      String reason = one.where() + ": " + one.reason();
      String way = one.wayOut().equals(wayOut) ? "" : one.wayOut().map(w -> " " + w).orElse("");
      wayOut = one.wayOut();
      wrapped(reason + way, 4);
    }
    List<Finding> untold = group.untold(told);
    if (!untold.isEmpty()) {
      cut = true;
      wrapped("and " + untold.size() + " more: " + FindingGroup.where(untold), 4);
    }
  }

  private String severity(Severity severity) {
    return severity == Severity.WORTH_KNOWING ? severity.label() : style.marked(severity.label());
  }
}
