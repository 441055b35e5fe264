package fingering.cli.text;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import fingering.cli.option.PlanningContext;
import fingering.cli.output.OutputOptions;
import fingering.cli.student.ScoringContext;
import fingering.cli.terminal.TextStyle;
import fingering.music.Passage;
import fingering.music.print.PrintedPart;
import fingering.page.MusicPicture;
import fingering.page.PageContent;
import fingering.page.PlanPage;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.plan.PlanComparer;
import fingering.verdict.Verdict;
import java.util.List;

/** Plans as an HTML page, or as an SVG picture of the music alone. */
public final class PageOutput {
  /** Lines are not wrapped here, because the browser does that. */
  private static final int UNLIMITED = Integer.MAX_VALUE;

  private PageOutput() {}

  /** Returns the page or picture of plans made in a planning context. */
  public static String of(
      OutputOptions.Format format,
      Comparison comparison,
      PlanComparer comparer,
      PlanningContext planning) {
    return of(format, comparison, comparer, planning.scoringContext(), planning.printed());
  }

  /** Returns the page or picture of plans. */
  public static String of(
      OutputOptions.Format format,
      Comparison comparison,
      PlanComparer comparer,
      ScoringContext scoring,
      PrintedPart printed) {
    PageContent content = content(comparison, comparer, scoring, printed);
    return format == OutputOptions.Format.SVG ? MusicPicture.of(content) : PlanPage.of(content);
  }

  /** The content of the page of plans. */
  public static PageContent content(
      Comparison comparison, PlanComparer comparer, ScoringContext scoring, PrintedPart printed) {
    Passage passage = comparison.passage();
    List<String> heading = HeadingText.of(passage, scoring, UNLIMITED, TextStyle.of(false));
    Verdict verdict = Verdict.of(comparison, scoring.level());
    return new PageContent(
        heading.get(0),
        VerdictText.of(comparison, scoring.level(), verdict),
        heading.subList(1, heading.size() - 1).stream().collect(ImmutableList.toImmutableList()),
        comparison,
        verdict.plan(),
        verdict.rival(),
        verdict.differing(),
        printed,
        ImmutableList.copyOf(SummaryText.remarks(comparison)),
        StudentsText.notes(comparison.plans(), scoring.students()),
        demands(comparison, comparer),
        ImmutableList.copyOf(TempoText.brief(comparison.plans(), scoring.level())),
        ImmutableList.copyOf(TempoText.limits(comparison.plans(), scoring.level())),
        SummaryText.CARE);
  }

  /** A line for each demand, by the name of its plan. */
  private static ImmutableListMultimap<String, String> demands(
      Comparison comparison, PlanComparer comparer) {
    ImmutableListMultimap.Builder<String, String> lines = ImmutableListMultimap.builder();
    for (Plan plan : comparison.plans()) {
      if (!plan.brief().demands().isEmpty()) {
        lines.putAll(plan.name(), DemandsText.lines(plan, comparer, false));
      }
    }
    return lines.build();
  }
}
