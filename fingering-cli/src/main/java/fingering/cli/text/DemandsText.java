package fingering.cli.text;

import fingering.cli.terminal.TextLayout;
import fingering.demand.Demand;
import fingering.demand.Skill;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.plan.PlanComparer;
import java.util.BitSet;
import java.util.TreeMap;

/** The demands on plans: where a plan meets them, and what they cost. */
public final class DemandsText {
  private DemandsText() {}

  /** A paragraph for each plan with demands; empty if there are none. */
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
    line(text, "Demands on '" + plan.name() + "':", columns);
    for (Demand demand : plan.brief().demands()) {
      String shown = demand instanceof Skill skill ? ": " + measures(plan, skill) : "";
      line(text, "  - " + demand.text() + shown, columns);
    }
    line(
        text,
        above == 0
            ? "  This costs no more than the free plan."
            : "  This costs " + above + " points more than the free plan.",
        columns);
  }

  private static void line(StringBuilder text, String line, int columns) {
    TextLayout.wrap(line, columns, 4).forEach(each -> text.append(each).append('\n'));
  }

  /** The measures in which a plan shows a skill: {@code m. 3–5, 9}. */
  public static String measures(Plan plan, Skill skill) {
    BitSet moments = skill.shownIn(plan.passage(), plan.grips());
    TreeMap<Integer, String> numbers = new TreeMap<>();
    moments.stream()
        .mapToObj(m -> plan.passage().moments().get(m).place())
        .forEach(place -> numbers.put(place.measureIndex(), place.measure()));
    return "m. " + String.join(", ", MeasureRanges.of(numbers));
  }
}
