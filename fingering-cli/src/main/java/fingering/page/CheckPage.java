package fingering.page;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import fingering.check.CheckReport;
import fingering.check.CheckTally;
import fingering.check.CheckVerdict;
import fingering.check.CheckedFile;
import fingering.check.ReportOptions;
import fingering.check.Spool;
import fingering.musicxml.reading.Score;
import fingering.page.template.JtecheckGenerated;
import fingering.page.template.JtescoreGenerated;
import fingering.page.view.CheckedScore;
import fingering.page.view.PageHead;
import fingering.page.view.PageHead.Section;
import fingering.page.view.Templates;
import fingering.page.view.Term;
import fingering.playability.CheckRequest;
import fingering.playability.Difficulty;
import fingering.playability.FindingKind;
import fingering.playability.ScoreCheck;
import fingering.playability.Severity;
import gg.jte.Content;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The page of a check: a table of all scores, then each score with its parts. The table comes first
 * but is complete last, so the sections of the scores wait in a temporary file.
 */
public final class CheckPage implements CheckReport {
  private final ReportOptions options;
  private final Consumer<String> output;
  private final Spool scores = new Spool();
  private final Set<FindingKind> kinds = EnumSet.noneOf(FindingKind.class);
  private final FoundMusic music;
  private int count;
  private String verdict = "";

  /**
   * Creates a page that is printed in parts.
   *
   * @param checked what is checked, to draw the measures of findings
   */
  public CheckPage(ReportOptions options, Checked checked, Consumer<String> output) {
    this.options = options;
    music = new FoundMusic(checked.scores(), checked.request(), checked.number());
    this.output = output;
  }

  /**
   * What is checked.
   *
   * @param scores reads a score
   * @param request how its parts are read
   * @param number the number of scores
   */
  public record Checked(Function<Path, Score> scores, CheckRequest request, int number) {}

  /** Passes characters on. */
  private static final class Parts extends Writer {
    private final Consumer<String> output;

    Parts(Consumer<String> output) {
      this.output = output;
    }

    @Override
    public void write(char[] characters, int from, int length) {
      output.accept(new String(characters, from, length));
    }

    @Override
    public void flush() {}

    @Override
    public void close() {}
  }

  @Override
  public void begin() {
    // Everything is printed at the end, when the table is complete.
  }

  @Override
  public void add(CheckedFile file) {
    file.check().ifPresent(check -> add(file, check));
  }

  private void add(CheckedFile file, ScoreCheck check) {
    count++;
    verdict = CheckVerdict.of(file, check);
    check
        .parts()
        .forEach(part -> options.shown(part).forEach(finding -> kinds.add(finding.kind())));
    CheckedScore score =
        CheckedScore.of(file, check, options, count, music.of(file.file(), check, options));
    scores.add(Templates.filled(out -> JtescoreGenerated.render(out, Templates.PLAIN, score)));
  }

  @Override
  public void end(CheckTally tally) {
    boolean several = tally.lines().size() != 1;
    ImmutableList.Builder<CheckedScore.Row> table = ImmutableList.builder();
    if (several) {
      int number = 0;
      for (CheckTally.Line line : tally.lines()) {
        table.add(CheckedScore.Row.of(line, ++number));
      }
    }
    Content shapes = music.shapes();
    Content waiting = out -> scores.drainTo(out::writeContent);
    try (Writer parts = new BufferedWriter(new Parts(output))) {
      Templates.write(
          out ->
              JtecheckGenerated.render(
                  out,
                  Templates.PLAIN,
                  head(tally, several),
                  PageStyle.sheet(),
                  tally.refused(),
                  several,
                  table.build(),
                  waiting,
                  shapes,
                  terms(kinds)),
          parts);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private PageHead head(CheckTally tally, boolean several) {
    String title =
        several
            ? text("check.title-several", tally.lines().size())
            : text("check.title", tally.lines().get(0).title());
    String first = several ? "scores" : CheckedScore.id(1);
    ImmutableList.Builder<Section> sections = ImmutableList.builder();
    if (!tally.refused().isEmpty()) {
      sections.add(new Section("refused", text("check.refused")));
    }
    sections
        .add(new Section(first, several ? text("check.scores") : text("check.findings")))
        .add(new Section("meaning", text("check.meaning")));
    return new PageHead(
        title,
        ImmutableList.of(several ? severities(tally.total()) : verdict),
        ImmutableList.of(
            text("check.level", CheckVerdict.players(options.level()), options.level().name())),
        new Section(first, text("skip.findings")),
        sections.build());
  }

  /** The number of findings of each severity, in words. */
  private static String severities(Map<Severity, Integer> counts) {
    return text(
        "check.found",
        counts.entrySet().stream()
            .map(count -> count.getValue() + " " + count.getKey().label())
            .collect(Collectors.joining(", ")));
  }

  /** What the severities, the grades and some kinds of findings mean. */
  static ImmutableList<Term> terms(Set<FindingKind> kinds) {
    ImmutableList.Builder<Term> terms = ImmutableList.builder();
    terms
        .add(new Term(text("check.unplayable"), text("check.unplayable-means")))
        .add(new Term(text("check.risky"), text("check.risky-means")))
        .add(new Term(text("check.notable"), text("check.notable-means")))
        .add(new Term(text("check.grades"), Difficulty.EXPLANATION));
    kinds.forEach(kind -> terms.add(new Term(kind.title(), kind.explanation())));
    return terms.build();
  }
}
