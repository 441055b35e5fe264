package fingering.page;

import com.google.common.collect.ImmutableMap;
import fingering.check.CheckReport;
import fingering.check.CheckTally;
import fingering.check.CheckVerdict;
import fingering.check.CheckedFile;
import fingering.check.ReportOptions;
import fingering.check.Spool;
import fingering.svg.Svg;
import fingering.playability.Difficulty;
import fingering.playability.FindingKind;
import fingering.playability.ScoreCheck;
import fingering.playability.Severity;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * The page of a check: a table of all scores, then each score with its parts. The table comes first
 * but is complete last, so the sections of the scores wait in a temporary file.
 */
public final class CheckPage implements CheckReport {
  private static final String CARE =
      "Players and their teachers have the last word. Playing can cause pain: where the hand has to"
          + " stretch or hurry, stop if it hurts, rest, and ask a teacher or a clinician.";

  private final ReportOptions options;
  private final Consumer<String> output;
  private final Spool scores = new Spool();
  private final Set<FindingKind> kinds = EnumSet.noneOf(FindingKind.class);
  private int count;
  private String verdict = "";

  /** Creates a page that is printed in parts. */
  public CheckPage(ReportOptions options, Consumer<String> output) {
    this.options = options;
    this.output = output;
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
    scores.add(new CheckedScoreHtml(options, count, file, check).html());
  }

  @Override
  public void end(CheckTally tally) {
    String title =
        tally.lines().size() == 1 ? tally.lines().get(0).title() : tally.lines().size() + " scores";
    String players =
        "Checked for %s (level %s)."
            .formatted(CheckVerdict.players(options.level()), options.level().name());
    String found = several(tally) ? counted(tally.total()) : verdict;
    PageFrame html =
        new PageFrame(
            title + ": can it be played?",
            List.of(found, players),
            CheckStyle.sheet(),
            new PageFrame.SkipLink("Skip to the findings", several(tally) ? "scores" : "s1"),
            sections(tally));
    if (!tally.refused().isEmpty()) {
      html.section("refused", "Not checked");
      html.raw("<ul class=\"file\">");
      tally.refused().forEach(line -> html.raw("<li>").raw(Svg.escaped(line)).raw("</li>"));
      html.raw("</ul>\n");
      html.endSection();
    }
    if (several(tally)) {
      html.section("scores", "All scores");
      html.raw(CheckedScoreHtml.table(tally));
      html.endSection();
    }
    output.accept(html.take());
    scores.drainTo(output);
    explain(html);
    output.accept(html.end(CARE));
  }

  private static boolean several(CheckTally tally) {
    return tally.lines().size() != 1;
  }

  private static ImmutableMap<String, String> sections(CheckTally tally) {
    ImmutableMap.Builder<String, String> sections = ImmutableMap.builder();
    if (!tally.refused().isEmpty()) {
      sections.put("refused", "Not checked");
    }
    return (several(tally)
            ? sections.put("scores", "All scores")
            : sections.put("s1", "The findings"))
        .put("meaning", "What it means")
        .buildOrThrow();
  }

  /** The number of findings of each severity, in words. */
  private static String counted(Map<Severity, Integer> counts) {
    return counts.entrySet().stream()
        .map(count -> count.getValue() + " " + count.getKey().label())
        .collect(Collectors.joining(", ", "Found: ", "."));
  }

  private void explain(PageFrame html) {
    html.section("meaning", "What it means");
    html.raw("<dl>");
    explain(html, "Unplayable", "Cannot be played as written.");
    explain(html, "Risky", "Players at this level may not manage it reliably.");
    explain(
        html,
        "Worth knowing",
        "Playable, but the arranger may want to know, or to make the part clearer.");
    explain(html, "Difficulty, 1 to 10", Difficulty.EXPLANATION);
    kinds.forEach(kind -> explain(html, kind.title(), kind.explanation()));
    html.raw("</dl>");
    html.endSection();
  }

  private static void explain(PageFrame html, String term, String explanation) {
    html.raw("<dt>").raw(Svg.escaped(term)).raw("</dt><dd>");
    html.raw(Svg.escaped(explanation)).raw("</dd>");
  }
}
