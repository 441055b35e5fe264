package fingering.cli.text;

import fingering.cli.terminal.NumberRanges;
import fingering.cli.terminal.TextLayout;
import fingering.demand.Demand;
import fingering.demand.Skill;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.plan.PlanComparer;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Collectors;

/** What plans were to meet, where they show it, and what it costs. */
public final class DemandsText {
  private DemandsText() {}

  /** A paragraph for each plan with demands; empty where there is none. */
  public static String of(Comparison comparison, PlanComparer comparer, int columns) {
    StringBuilder text = new StringBuilder();
    for (Plan plan : comparison.plans()) {
      if (!plan.brief().demands().isEmpty()) {
        text.append('\n');
        append(text, plan, comparer.extraCost(plan), columns);
      }
    }
    return text.toString();
  }

  private static void append(StringBuilder text, Plan plan, long above, int columns) {
    line(text, "Demanded of '" + plan.name() + "':", columns);
    for (Demand demand : plan.brief().demands()) {
      String shown = demand instanceof Skill skill ? ": " + measures(plan, skill) : "";
      line(text, "  - " + demand.text() + shown, columns);
    }
    line(
        text,
        above == 0
            ? "  This costs nothing beyond the free plan."
            : "  This costs " + above + " points more than the free plan.",
        columns);
  }

  private static void line(StringBuilder text, String line, int columns) {
    TextLayout.wrap(line, columns, 4).forEach(each -> text.append(each).append('\n'));
  }

  /** The measures in which a skill is shown, runs drawn together: {@code m. 3-5, 9}. */
  public static String measures(Plan plan, Skill skill) {
    BitSet moments = skill.shownIn(plan.passage(), plan.grips());
    Set<Integer> indices = new LinkedHashSet<>();
    moments.stream()
        .forEach(m -> indices.add(plan.passage().moments().get(m).place().measureIndex()));
    return "m. "
        + NumberRanges.of(indices).stream()
            .map(
                run ->
                    number(plan, run.from())
                        + (run.from() == run.to() ? "" : "\u2013" + number(plan, run.to())))
            .collect(Collectors.joining(", "));
  }

  private static String number(Plan plan, int index) {
    return plan.passage().measures().stream()
        .filter(measure -> measure.index() == index)
        .findFirst()
        .orElseThrow()
        .number();
  }
}
