package fingering.cli.text;

import com.google.common.base.Ascii;
import fingering.cli.option.DetailOptions;
import fingering.cli.student.ScoringContext;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.music.Measure;
import fingering.music.Passage;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.plan.PlanComparer;
import fingering.plan.PlanRemarks;
import fingering.verdict.Verdict;
import java.util.List;
import java.util.function.Function;

/**
 * Plans as text: the verdict, where the plans differ, a line for each plan, and the command to type
 * next. On request also every note and the costs.
 */
public final class PlansText {
  /** The most measures with differences that are listed. */
  private static final int MOST = 20;

  /** The same, if there is no reason to choose the other plan. */
  private static final int FEW = 8;

  private final Comparison comparison;
  private final PlanComparer comparer;
  private final ScoringContext scoring;
  private final DetailOptions detail;
  private final int columns;
  private final TextStyle style;
  private final Verdict verdict;
  private final StringBuilder text = new StringBuilder();

  private PlansText(
      Comparison comparison,
      PlanComparer comparer,
      ScoringContext scoring,
      DetailOptions detail,
      int columns,
      TextStyle style) {
    this.comparison = comparison;
    this.comparer = comparer;
    this.scoring = scoring;
    this.detail = detail;
    this.columns = columns;
    this.style = style;
    verdict = Verdict.of(comparison, scoring.level());
  }

  /**
   * Returns the text.
   *
   * @param next the lines of the command to type next with the chosen plan
   */
  public static String of(
      Comparison comparison,
      PlanComparer comparer,
      ScoringContext scoring,
      DetailOptions detail,
      Function<Plan, List<String>> next,
      int columns,
      TextStyle style) {
    PlansText plans = new PlansText(comparison, comparer, scoring, detail, columns, style);
    plans.write(next);
    return plans.text.toString();
  }

  private void write(Function<Plan, List<String>> next) {
    Passage passage = comparison.passage();
    TextLayout.wrap(title(passage), columns, 2).forEach(each -> line(style.bold(each)));
    verdict();
    passage.remarks().forEach(remark -> paragraph("Note: " + remark));
    comparison.remarks().forEach(remark -> paragraph("Note: " + remark));
    comparison.plans().stream()
        .flatMap(plan -> PlanRemarks.of(plan).stream())
        .distinct()
        .forEach(remark -> paragraph("Note: " + remark));
    line("");
    music();
    if (comparison.plans().size() > 1) {
      PlanTable.of(
              "Plan",
              comparison.plans().stream()
                  .map(plan -> new PlanTable.Row(plan.name(), plan, scoring.level()))
                  .toList(),
              style)
          .forEach(this::line);
      line("");
    }
    text.append(DemandsText.of(verdict.plan(), comparer, detail.costs, columns, style));
    text.append(StudentsText.of(comparison.plans(), scoring.students(), columns, style));
    if (detail.notes) {
      comparison.details().forEach(remark -> paragraph("Note: " + remark));
      text.append(ComparisonText.notes(comparison, columns, style));
    }
    if (detail.costs) {
      text.append(CostsText.of(comparison, scoring, columns, style));
    }
    List<String> lines = next.apply(verdict.plan());
    if (!lines.isEmpty()) {
      line(style.bold("Next"));
      lines.forEach(each -> line("  " + each));
      line("");
    }
    paragraph(SummaryText.CARE);
  }

  /** The title, instrument, measures, tempo and scoring in one line. */
  private String title(Passage passage) {
    return "%s: %s; %s"
        .formatted(
            HeadingText.title(passage),
            HeadingText.music(passage),
            Ascii.toLowerCase(scoring.line().substring(0, 1)) + scoring.line().substring(1));
  }

  private void verdict() {
    List<String> sentences = VerdictText.of(comparison, scoring.level(), verdict);
    List<String> lines = TextLayout.wrap(String.join(" ", sentences), columns, 0);
    // Only the answer is bold; it may go on to the next line.
    String answer = sentences.get(0);
    if (answer.length() <= lines.get(0).length()) {
      line(style.bold(answer) + lines.get(0).substring(answer.length()));
      lines.subList(1, lines.size()).forEach(this::line);
    } else {
      lines.forEach(this::line);
    }
  }

  private void music() {
    if (verdict.rival().isEmpty()) {
      FingersText.of(verdict.plan(), columns, style).forEach(this::line);
      line("");
      return;
    }
    Plan rival = verdict.rival().get();
    // The first plan is one of the two.
    boolean takesFirst = verdict.plan().sameFingering(comparison.plans().get(0));
    List<DifferencesText.Column> columnsInOrder =
        (takesFirst ? List.of(verdict.plan(), rival) : List.of(rival, verdict.plan()))
            .stream().map(plan -> new DifferencesText.Column(plan.name(), plan)).toList();
    List<Measure> differing = verdict.differing();
    int most = verdict.reason() == Verdict.Reason.RIVAL_SAVES_NOTHING ? FEW : MOST;
    DifferencesText.of(columnsInOrder, differing, most, columns, style).forEach(this::line);
    if (differing.size() > most && !detail.notes) {
      line("(--notes shows every note)");
    }
    line("");
  }

  private void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }

  private void paragraph(String paragraph) {
    TextLayout.wrap(paragraph, columns, 2).forEach(this::line);
  }
}
