package fingering.cli.text;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import fingering.cli.option.OutputOptions;
import fingering.cli.option.PlanningContext;
import fingering.cli.student.ScoringContext;
import fingering.cli.terminal.TextStyle;
import fingering.music.Passage;
import fingering.music.PrintedPart;
import fingering.page.PageContent;
import fingering.page.PlanPage;
import fingering.page.StripSvg;
import fingering.page.staff.PlainEngraver;
import fingering.plan.Comparison;
import fingering.plan.PlanComparer;
import java.util.List;
import java.util.stream.Collectors;

/** Plans as a page with the music, or as the music alone. */
public final class PageOutput {
  /** No line is wrapped: the page does that. */
  private static final int NO_END = Integer.MAX_VALUE;

  private PageOutput() {}

  /** The same of a score that has been read. */
  public static String of(
      OutputOptions.Format format,
      Comparison comparison,
      PlanComparer comparer,
      PlanningContext planning) {
    return of(format, comparison, comparer, planning.scoringContext(), planning.printed());
  }

  public static String of(
      OutputOptions.Format format,
      Comparison comparison,
      PlanComparer comparer,
      ScoringContext charging,
      PrintedPart printed) {
    PageContent content = content(comparison, comparer, charging, printed);
    return format == OutputOptions.Format.SVG
        ? StripSvg.of(content, new PlainEngraver())
        : PlanPage.of(content, new PlainEngraver());
  }

  private static PageContent content(
      Comparison comparison, PlanComparer comparer, ScoringContext charging, PrintedPart printed) {
    Passage passage = comparison.passage();
    List<String> heading = HeadingText.of(passage, charging, NO_END, TextStyle.of(false));
    ImmutableListMultimap<String, String> told =
        ImmutableListMultimap.<String, String>builder()
            .putAll(StudentsText.told(comparison.plans(), charging.students()))
            .putAll(
                TempoText.heading(charging.level()),
                TempoText.told(comparison.plans(), charging.level()))
            .build();
    return new PageContent(
        heading.get(0),
        heading.subList(1, heading.size() - 1).stream().collect(ImmutableList.toImmutableList()),
        comparison,
        printed,
        ImmutableList.copyOf(SummaryText.buys(comparison)),
        told,
        lines(DemandsText.of(comparison, comparer, NO_END)),
        SummaryText.CARE);
  }

  private static ImmutableList<String> lines(String text) {
    return text.lines()
        .map(line -> line.strip().replaceFirst("^- ", ""))
        .filter(line -> !line.isEmpty())
        .collect(Collectors.collectingAndThen(Collectors.toList(), ImmutableList::copyOf));
  }
}
