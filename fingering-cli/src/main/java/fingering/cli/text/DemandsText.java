package fingering.cli.text;

import com.google.common.collect.ImmutableList;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.demand.Demand;
import fingering.demand.Skill;
import fingering.plan.Plan;
import fingering.plan.PlanComparer;
import fingering.plan.PlanFigure;
import fingering.verdict.DemandPrice;
import fingering.verdict.PlanFigures;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.TreeMap;

/** The demands on a plan: where it meets them, and the price of each. */
public final class DemandsText {
  private DemandsText() {}

  /** A paragraph for each demand, and an empty line at the end; empty if there are none. */
  public static String of(
      Plan plan, PlanComparer comparer, boolean points, int columns, TextStyle style) {
    if (plan.brief().demands().isEmpty()) {
      return "";
    }
    StringBuilder text = new StringBuilder();
    text.append(style.bold("Demands on '" + plan.name() + "'")).append('\n');
    lines(plan, comparer, points)
        .forEach(
            line ->
                TextLayout.wrap("- " + line, columns, 2)
                    .forEach(each -> text.append(each).append('\n')));
    return text.append('\n').toString();
  }

  /** A line for each demand. */
  static List<String> lines(Plan plan, PlanComparer comparer, boolean points) {
    PlanComparer bare = comparer.withDemands(ImmutableList.of());
    List<String> lines = new ArrayList<>();
    for (DemandPrice price : DemandPrice.of(plan, bare::plan)) {
      Demand demand = price.demand();
      String shown = demand instanceof Skill skill ? ": " + measures(plan, skill) : "";
      lines.add(demand.text() + shown + ". " + price(price, points));
    }
    return lines;
  }

  private static String price(DemandPrice price, boolean points) {
    String numbers =
        points
            ? " (alone it costs %d points; dropping it saves %d)"
                .formatted(price.alone(), price.dropping())
            : "";
    if (price.dropping() == 0) {
      return "It costs nothing" + (price.alone() > 0 ? " beside the others" : "") + numbers + ".";
    }
    String change = change(price.saved());
    return (change.isEmpty() ? "It makes the plan a little harder" : "Without it: " + change)
        + numbers
        + ".";
  }

  private static String change(PlanFigures saved) {
    List<String> changes = new ArrayList<>();
    for (PlanFigure figure : PlanFigure.values()) {
      int fewer = saved.count(figure);
      int size = Math.abs(fewer);
      if (fewer != 0) {
        changes.add("%d %s %s".formatted(size, fewer > 0 ? "fewer" : "more", figure.noun(size)));
      }
    }
    return String.join(", ", changes);
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
