package fingering.cli.text;

import fingering.check.CheckReport;
import fingering.check.CheckTally;
import fingering.check.CheckVerdict;
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

/**
 * Findings as text: the answer in a sentence, a table of parts, then the findings of each part, the
 * most severe first.
 */
public final class CheckText implements CheckReport {
  /** The number of sentences for findings of one kind, unless all are wanted. */
  private static final int SENTENCES = 3;

  /** The number of components that count for the difficulty of a part. */
  private static final int COMPONENTS = 3;

  private final ReportOptions options;
  private final int limit;
  private final int columns;
  private final TextStyle style;
  private final CheckTable tables;
  private final Consumer<String> output;
  private final StringBuilder text = new StringBuilder();
  private boolean first = true;
  private boolean cut;

  /**
   * Creates a report.
   *
   * @param all whether to list all findings
   */
  public CheckText(
      ReportOptions options, boolean all, int columns, TextStyle style, Consumer<String> output) {
    this.options = options;
    limit = all ? Integer.MAX_VALUE - 1 : SENTENCES;
    this.columns = columns;
    this.style = style;
    tables = new CheckTable(columns, style);
    this.output = output;
  }

  @Override
  public void begin() {
    // The text of each score names the level.
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
        wrapped("Only the first of many similar findings are listed; --all lists every one.", 0);
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
    output.accept(text.toString());
    text.setLength(0);
  }

  private void line(String line) {
    text.append(line).append('\n');
  }

  /** Adds a paragraph that is indented; its further lines are indented by two more columns. */
  private void wrapped(String paragraph, int indent) {
    TextLayout.wrap(paragraph, columns - indent, 2)
        .forEach(line -> line(" ".repeat(indent) + line));
  }

  private void score(CheckedFile file, ScoreCheck check) {
    if (!first) {
      line("");
      line("");
    }
    first = false;
    TextLayout.wrap(CheckVerdict.of(file, check), columns, 0)
        .forEach(line -> line(style.bold(line)));
    wrapped(
        "%s, for %s (level %s)"
            .formatted(file.name(), CheckVerdict.players(check.level()), check.level().name()),
        0);
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
    List<FindingGroup> groups = FindingGroup.of(options.shown(part), part.movements());
    if (groups.isEmpty() && part.remarks().isEmpty()) {
      return;
    }
    line("");
    line(
        style.bold(part.part().name())
            + " ("
            + part.instrument().nameInSentence()
            + ", "
            + part.forces().id().replace('-', ' ')
            + "): difficulty "
            + part.difficulty().grade()
            + " of 10");
    part.remarks().forEach(remark -> wrapped("Note: " + remark, 2));
    String hard = hardComponents(part.difficulty());
    if (!hard.isEmpty()) {
      wrapped(hard, 2);
    }
    groups.forEach(this::group);
  }

  /** The components that count, without those of the lowest grade. */
  private static String hardComponents(Difficulty difficulty) {
    return difficulty.components().stream()
        .limit(COMPONENTS)
        .filter(component -> Math.round(component.grade()) > 1)
        .map(
            component ->
                component.name()
                    + " "
                    + String.format(Locale.ROOT, "%.0f", component.grade())
                    + " ("
                    + component.amount()
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
    Optional<String> suggestion = Optional.empty();
    for (FindingGroup.Sentence sentence : group.sentences(limit)) {
      String reason = sentence.where() + ": " + sentence.reason();
      String fix =
          sentence.suggestion().equals(suggestion)
              ? ""
              : sentence.suggestion().map(text -> " " + text).orElse("");
      suggestion = sentence.suggestion();
      wrapped(reason + fix, 4);
    }
    List<Finding> unlisted = group.unlisted(limit);
    if (!unlisted.isEmpty()) {
      cut = true;
      wrapped("and " + unlisted.size() + " more: " + group.where(unlisted), 4);
    }
  }

  private String severity(Severity severity) {
    return severity == Severity.WORTH_KNOWING ? severity.label() : style.marked(severity.label());
  }
}
