package fingering.cli.text;

import fingering.cli.student.ScoringContext;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.plan.Plan.MeasureCost;
import fingering.plan.PlanFigure;
import fingering.plan.RuleCost;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The costs of plans: points by rule, what each rule means, counts, hardest measures, tempi. */
final class CostsText {
  private static final int LABEL = 28;
  private static final int NARROWEST = 13;

  private final Comparison comparison;
  private final ScoringContext scoring;
  private final int columns;
  private final TextStyle style;
  private final StringBuilder text = new StringBuilder();

  /** The plans in blocks that fit side by side. */
  private final List<List<Plan>> plans;

  private final int cell;

  private CostsText(Comparison comparison, ScoringContext scoring, int columns, TextStyle style) {
    this.comparison = comparison;
    this.scoring = scoring;
    this.columns = columns;
    this.style = style;
    plans = TextLayout.blocks(comparison.plans(), (columns - LABEL) / NARROWEST);
    cell = Math.max(NARROWEST, Math.min(18, (columns - LABEL) / plans.get(0).size()));
  }

  static String of(Comparison comparison, ScoringContext scoring, int columns, TextStyle style) {
    CostsText costs = new CostsText(comparison, scoring, columns, style);
    costs.write();
    return costs.text.toString();
  }

  private void write() {
    plans.forEach(this::costs);
    rules();
    plans.forEach(this::counts);
    hardest();
    tempi();
  }

  private void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }

  private void paragraph(String paragraph) {
    TextLayout.wrap(paragraph, columns, 2).forEach(this::line);
  }

  private void row(List<Plan> shown, String label, Function<Plan, String> content) {
    StringBuilder row = new StringBuilder(TextLayout.pad(label, LABEL));
    // A long label takes space from the first number, which is short.
    int longer = row.length() - LABEL;
    for (Plan plan : shown) {
      row.append(TextLayout.padLeft(content.apply(plan), cell - longer));
      longer = 0;
    }
    line(row.toString());
  }

  private void heading(List<Plan> shown, String label) {
    StringBuilder head = new StringBuilder(TextLayout.pad(label, LABEL));
    for (Plan plan : shown) {
      head.append(TextLayout.padLeft(plan.name(), cell));
    }
    line(style.bold(head.toString()));
  }

  private void costs(List<Plan> shown) {
    heading(shown, "Points by rule");
    Map<String, String> rules = new LinkedHashMap<>();
    for (Plan plan : comparison.plans()) {
      plan.rules().forEach(rule -> rules.putIfAbsent(rule.rule(), rule.name()));
    }
    rules.forEach((id, name) -> row(shown, "  " + name, plan -> points(plan, id)));
    row(shown, "  Total", plan -> Long.toString(plan.total()));
    line("");
  }

  private void rules() {
    line(style.bold("What each rule costs"));
    comparison.plans().stream()
        .flatMap(plan -> plan.rules().stream())
        .map(CostsText::explanation)
        .distinct()
        .forEach(this::paragraph);
    line("");
  }

  private static String explanation(RuleCost rule) {
    return "  "
        + rule.name()
        + ": "
        + rule.explanation()
        + " ("
        + rule.weight()
        + " points per "
        + rule.unit()
        + ")";
  }

  private static String points(Plan plan, String rule) {
    return plan.rules().stream()
        .filter(cost -> cost.rule().equals(rule))
        .map(RuleCost::cost)
        .map(Object::toString)
        .findFirst()
        .orElse("–");
  }

  private void counts(List<Plan> shown) {
    if (plans.size() == 1) {
      line(style.bold("Counts"));
    } else {
      heading(shown, "Counts");
    }
    for (PlanFigure figure : PlanFigure.values()) {
      row(shown, "  " + figure.heading(), plan -> Integer.toString(figure.in(plan)));
    }
    row(shown, "  Open strings", plan -> Integer.toString(plan.openStrings()));
    row(shown, "  Highest position", CostsText::highest);
    comparison
        .positions()
        .forEach(
            position ->
                row(
                    shown,
                    "  Stopped notes in " + position.display(),
                    plan -> Integer.toString(plan.notesByPosition().getOrDefault(position, 0))));
    line("");
  }

  private static String highest(Plan plan) {
    return plan.highestPosition().map(p -> p.display()).orElse("–");
  }

  private void hardest() {
    line(style.bold("Hardest measures"));
    for (Plan plan : comparison.plans()) {
      String measures =
          plan.hardestMeasures(3).stream()
              .map(CostsText::measure)
              .collect(Collectors.joining(", "));
      paragraph("  " + plan.name() + ": " + (measures.isEmpty() ? "none" : measures));
    }
    line("");
  }

  private void tempi() {
    line(style.bold(TempoText.heading(scoring.level())));
    TempoText.sentences(comparison.plans(), scoring.level())
        .forEach(sentence -> paragraph("  " + sentence));
    line("");
  }

  private static String measure(MeasureCost cost) {
    return "m. "
        + cost.measure()
        + " ("
        + cost.cost()
        + ", "
        + cost.costliestRule().toLowerCase(Locale.ROOT)
        + ")";
  }
}
