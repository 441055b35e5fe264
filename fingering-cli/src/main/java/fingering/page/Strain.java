package fingering.page;

import fingering.music.Moment;
import fingering.svg.Svg;
import fingering.plan.Plan;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The measures in which a plan strains the hand, with links: stretches and thumb position. */
final class Strain {
  private static final String STRETCH = "extension";
  private static final int MOST = 12;

  private Strain() {}

  /**
   * List items for stretches and for thumb position; empty if the plan has neither.
   *
   * @param index the index of the plan on the page
   */
  static String html(Plan plan, int index) {
    String name = Svg.escaped(Lanes.name(index, plan.name()));
    return line(
            plan,
            name + " stretches the hand in ",
            m -> plan.chargesAt(m).stream().anyMatch(charge -> charge.rule().equals(STRETCH)))
        + line(
            plan,
            name + " is in thumb position in ",
            m -> plan.grips().get(m).frame().thumb().isPresent());
  }

  private static String line(Plan plan, String text, IntPredicate strains) {
    Map<Integer, String> measures = new LinkedHashMap<>();
    IntStream.range(0, plan.passage().moments().size())
        .filter(strains)
        .mapToObj(plan.passage().moments()::get)
        .map(Moment::place)
        .forEach(place -> measures.putIfAbsent(place.measureIndex(), place.measure()));
    if (measures.isEmpty()) {
      return "";
    }
    int more = Math.max(0, measures.size() - MOST);
    return measures.entrySet().stream()
        .limit(MOST)
        .map(measure -> MeasureLinks.link(measure.getKey(), measure.getValue()))
        .collect(
            Collectors.joining(
                ", ", "<li>" + text, (more > 0 ? " and " + more + " more" : "") + ".</li>"));
  }
}
