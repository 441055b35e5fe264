package fingering.page;

import fingering.svg.Svg;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.plan.RuleCost;
import fingering.scoring.Charge;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToIntFunction;

/** Tables of the costs of plans, by rule and by measure. */
final class CostTables {
  private static final int HARDEST = 6;

  private final Comparison comparison;

  CostTables(Comparison comparison) {
    this.comparison = comparison;
  }

  /** Points of each measure, by the index of the measure in the part. */
  static Map<Integer, Long> byMeasure(Plan plan) {
    Map<Integer, Long> costs = new TreeMap<>();
    for (Charge charge : plan.charges()) {
      int measure = plan.passage().moments().get(charge.moment()).place().measureIndex();
      costs.merge(measure, charge.cost(), Long::sum);
    }
    return costs;
  }

  private String head(String first) {
    StringBuilder head = new StringBuilder("<thead><tr><th scope=\"col\">" + first + "</th>");
    for (int i = 0; i < comparison.plans().size(); i++) {
      head.append("<th scope=\"col\">");
      head.append(Svg.escaped(Lanes.name(i, comparison.plans().get(i).name()))).append("</th>");
    }
    return head.append("</tr></thead>").toString();
  }

  private Iterable<RuleCost> rules() {
    Map<String, RuleCost> rules = new LinkedHashMap<>();
    comparison.plans().forEach(p -> p.rules().forEach(r -> rules.putIfAbsent(r.rule(), r)));
    return rules.values();
  }

  /** A table of the rules, the most expensive first, with a bar for each plan. */
  String byRule() {
    long most =
        comparison.plans().stream()
            .flatMap(plan -> plan.rules().stream())
            .mapToLong(RuleCost::cost)
            .max()
            .orElse(1);
    StringBuilder table =
        new StringBuilder("<table><caption>Points by rule</caption>").append(head("Rule"));
    table.append("<tbody>");
    for (RuleCost rule : rules()) {
      table.append("<tr><th scope=\"row\">").append(Svg.escaped(rule.name())).append("</th>");
      for (int i = 0; i < comparison.plans().size(); i++) {
        table.append(points(cost(comparison.plans().get(i), rule.rule()), most, i));
      }
      table.append("</tr>");
    }
    table.append("</tbody><tfoot><tr><th scope=\"row\">Total</th>");
    comparison
        .plans()
        .forEach(plan -> table.append("<td class=\"n\">").append(plan.total()).append("</td>"));
    return table.append("</tr></tfoot></table>\n").toString();
  }

  /** The explanation of each rule, folded. */
  String explained() {
    StringBuilder list = new StringBuilder("<details><summary>What each rule costs</summary><dl>");
    for (RuleCost rule : rules()) {
      list.append("<dt>").append(Svg.escaped(rule.name())).append("</dt><dd>");
      list.append(
          Svg.escaped(
              "%s (%d points per %s)".formatted(rule.explanation(), rule.weight(), rule.unit())));
      list.append("</dd>");
    }
    return list.append("</dl></details>\n").toString();
  }

  private static long cost(Plan plan, String rule) {
    return plan.rules().stream()
        .filter(cost -> cost.rule().equals(rule))
        .mapToLong(RuleCost::cost)
        .findFirst()
        .orElse(0);
  }

  private static String points(long cost, long most, int plan) {
    long width = Math.round(100.0 * Math.max(0, cost) / most);
    String bar =
        width == 0
            ? ""
            : "<span class=\"cost%d\" style=\"width:%d%%\"></span>".formatted(plan % 3, width);
    return "<td class=\"n\">%s%s</td>".formatted(cost == 0 ? "–" : Long.toString(cost), bar);
  }

  /** A table of the hardest measures of all plans, with links to the music. */
  String hardest() {
    List<Map<Integer, Long>> costs =
        comparison.plans().stream().map(CostTables::byMeasure).toList();
    Map<Integer, Long> worst = new TreeMap<>();
    costs.forEach(plan -> plan.forEach((m, cost) -> worst.merge(m, cost, Math::max)));
    List<Integer> measures = new ArrayList<>(worst.keySet());
    measures.removeIf(measure -> worst.get(measure) <= 0);
    measures.sort((a, b) -> Long.compare(worst.get(b), worst.get(a)));
    StringBuilder table =
        new StringBuilder("<table><caption>Hardest measures, most points first</caption>");
    table.append(head("Measure")).append("<tbody>");
    for (int measure : measures.subList(0, Math.min(HARDEST, measures.size()))) {
      table.append("<tr><th scope=\"row\">").append(MeasureLinks.link(measure, number(measure)));
      table.append("</th>");
      for (int i = 0; i < costs.size(); i++) {
        long cost = costs.get(i).getOrDefault(measure, 0L);
        table.append("<td>").append(cost);
        if (cost > 0) {
          table
              .append(", ")
              .append(Svg.escaped(mostExpensiveRule(comparison.plans().get(i), measure)));
        }
        table.append("</td>");
      }
      table.append("</tr>");
    }
    return table.append("</tbody></table>\n").toString();
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

  /** A table of counts for each plan. */
  String counts() {
    StringBuilder table =
        new StringBuilder("<table><caption>Counts</caption>").append(head("Item"));
    table.append("<tbody>");
    count(table, "Shifts", Plan::shifts);
    count(table, "String crossings", Plan::crossings);
    count(table, "Fourth fingers", Plan::fourthFingers);
    count(table, "Open strings", Plan::openStrings);
    comparison
        .positions()
        .forEach(
            position ->
                count(
                    table,
                    "Stopped notes in " + position.display(),
                    plan -> plan.notesByPosition().getOrDefault(position, 0)));
    return table.append("</tbody></table>\n").toString();
  }

  private void count(StringBuilder table, String item, ToIntFunction<Plan> counting) {
    table.append("<tr><th scope=\"row\">").append(item).append("</th>");
    for (Plan plan : comparison.plans()) {
      table.append("<td class=\"n\">").append(counting.applyAsInt(plan)).append("</td>");
    }
    table.append("</tr>");
  }

  private String number(int index) {
    return comparison.passage().measure(index).orElseThrow().number();
  }
}
