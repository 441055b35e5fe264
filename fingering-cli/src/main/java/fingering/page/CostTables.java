package fingering.page;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import fingering.page.view.Costs;
import fingering.page.view.Figures;
import fingering.page.view.PlaceLink;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.plan.PlanFigure;
import fingering.plan.RuleCost;
import fingering.scoring.Charge;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToIntFunction;

/** Plans in figures, and their costs by rule and by measure. */
final class CostTables {
  private static final int HARDEST = 6;

  /** The number of styles of bars. */
  private static final int STYLES = 3;

  private static final String NONE = "–";

  private final Comparison comparison;

  CostTables(Comparison comparison) {
    this.comparison = comparison;
  }

  /** Points of each measure, by the index of the measure in the part. */
  private static Map<Integer, Long> byMeasure(Plan plan) {
    Map<Integer, Long> costs = new TreeMap<>();
    for (Charge charge : plan.charges()) {
      int measure = plan.passage().moments().get(charge.moment()).place().measureIndex();
      costs.merge(measure, charge.cost(), Long::sum);
    }
    return costs;
  }

  private <T> ImmutableList<T> each(Function<Plan, T> value) {
    return comparison.plans().stream().map(value).collect(ImmutableList.toImmutableList());
  }

  /**
   * The plans in figures.
   *
   * @param tempi the comfortable tempo of each plan
   */
  Figures figures(ImmutableList<String> tempi) {
    ImmutableList.Builder<Figures.Row> rows = ImmutableList.builder();
    for (PlanFigure figure : PlanFigure.values()) {
      rows.add(count(figure.heading(), figure::in));
    }
    rows.add(count(text("figures.open"), Plan::openStrings));
    comparison
        .positions()
        .forEach(
            position ->
                rows.add(
                    count(
                        text("figures.position", position.display()),
                        plan -> plan.notesByPosition().getOrDefault(position, 0))));
    rows.add(new Figures.Row(text("figures.tempo"), tempi));
    boolean alone = comparison.plans().size() == 1;
    return new Figures(alone ? ImmutableList.of() : each(Plan::name), rows.build());
  }

  private Figures.Row count(String item, ToIntFunction<Plan> counting) {
    return new Figures.Row(item, each(plan -> Integer.toString(counting.applyAsInt(plan))));
  }

  /** The costs. */
  Costs costs() {
    return new Costs(
        each(Plan::name), hardest(), rules(), each(plan -> Long.toString(plan.total())));
  }

  private ImmutableList<Costs.Rule> rules() {
    Map<String, RuleCost> rules = new LinkedHashMap<>();
    comparison.plans().forEach(p -> p.rules().forEach(r -> rules.putIfAbsent(r.rule(), r)));
    long most =
        comparison.plans().stream()
            .flatMap(plan -> plan.rules().stream())
            .mapToLong(RuleCost::cost)
            .max()
            .orElse(1);
    ImmutableList.Builder<Costs.Rule> rows = ImmutableList.builder();
    for (RuleCost rule : rules.values()) {
      ImmutableList.Builder<Costs.Bar> bars = ImmutableList.builder();
      for (int i = 0; i < comparison.plans().size(); i++) {
        long cost = cost(comparison.plans().get(i), rule.rule());
        bars.add(
            new Costs.Bar(
                "cost" + i % STYLES,
                cost == 0 ? NONE : Long.toString(cost),
                Math.round(100.0 * Math.max(0, cost) / most)));
      }
      rows.add(
          new Costs.Rule(
              rule.name(),
              text("costs.rule", rule.explanation(), rule.weight(), rule.unit()),
              bars.build()));
    }
    return rows.build();
  }

  private static long cost(Plan plan, String rule) {
    return plan.rules().stream()
        .filter(cost -> cost.rule().equals(rule))
        .mapToLong(RuleCost::cost)
        .findFirst()
        .orElse(0);
  }

  /** The hardest measures of all plans. */
  private ImmutableList<Costs.Hard> hardest() {
    List<Map<Integer, Long>> costs =
        comparison.plans().stream().map(CostTables::byMeasure).toList();
    Map<Integer, Long> worst = new TreeMap<>();
    costs.forEach(plan -> plan.forEach((m, cost) -> worst.merge(m, cost, Math::max)));
    List<Integer> measures = new ArrayList<>(worst.keySet());
    measures.removeIf(measure -> worst.get(measure) <= 0);
    measures.sort((a, b) -> Long.compare(worst.get(b), worst.get(a)));
    ImmutableList.Builder<Costs.Hard> rows = ImmutableList.builder();
    for (int measure : measures.subList(0, Math.min(HARDEST, measures.size()))) {
      ImmutableList.Builder<String> points = ImmutableList.builder();
      for (int i = 0; i < costs.size(); i++) {
        long cost = costs.get(i).getOrDefault(measure, 0L);
        points.add(
            cost > 0
                ? text("costs.hard", cost, mostExpensiveRule(comparison.plans().get(i), measure))
                : NONE);
      }
      rows.add(
          new Costs.Hard(
              PlaceLink.to(comparison.passage().measure(measure).orElseThrow()), points.build()));
    }
    return rows.build();
  }

  /** The name of the rule that costs most in a measure. */
  private static String mostExpensiveRule(Plan plan, int measure) {
    Map<String, Long> costs = new TreeMap<>();
    for (Charge charge : plan.charges()) {
      if (plan.passage().moments().get(charge.moment()).place().measureIndex() == measure) {
        costs.merge(charge.rule(), charge.cost(), Long::sum);
      }
    }
    String rule =
        costs.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey();
    return plan.rules().stream()
        .filter(cost -> cost.rule().equals(rule))
        .map(cost -> cost.name().toLowerCase(Locale.ROOT))
        .findFirst()
        .orElse(rule);
  }
}
