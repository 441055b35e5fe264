package fingering.cli.text;

import fingering.plan.Plan;
import fingering.plan.Stay;
import fingering.tables.Position;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Where the hand is in a plan, in words. */
public final class Whereabouts {
  private static final int LISTED = 6;

  private Whereabouts() {}

  /** Whether the plan has no stopped note above first position. */
  static boolean low(Plan plan) {
    return plan.highestPosition().map(p -> p.compareTo(Position.FIRST) <= 0).orElse(true);
  }

  /** The positions of a plan: {@code 3rd position in m. 17–24, otherwise 1st}. */
  public static String of(Plan plan) {
    if (plan.highestPosition().isEmpty()) {
      return "open strings only";
    }
    if (low(plan)) {
      return plan.notesByPosition().firstKey().display() + " position throughout";
    }
    if (plan.brief().living()) {
      return "%d of %d stopped notes in %s position"
          .formatted(
              plan.notesInPreferred(),
              plan.stoppedNotes(),
              plan.brief().preferred().stream()
                  .map(Position::display)
                  .collect(Collectors.joining(" or ")));
    }
    String stays = stays(plan);
    return plan.notesByPosition().firstKey().compareTo(Position.FIRST) > 0
        ? stays
        : stays + ", otherwise 1st";
  }

  /** The stays above first position: {@code 3rd position in m. 17–24, 30}. */
  private static String stays(Plan plan) {
    Map<Position, Set<String>> measures = new TreeMap<>();
    for (Stay stay : plan.stays()) {
      if (stay.position().compareTo(Position.FIRST) > 0) {
        measures.computeIfAbsent(stay.position(), p -> new LinkedHashSet<>()).add(stay.measures());
      }
    }
    return measures.entrySet().stream()
        .map(
            entry ->
                "%s position in m. %s"
                    .formatted(entry.getKey().display(), list(List.copyOf(entry.getValue()))))
        .collect(Collectors.joining(" and "));
  }

  /** The first measures, separated by commas, and the number of the others. */
  static String list(List<String> measures) {
    int listed = Math.min(measures.size(), LISTED);
    int more = measures.size() - listed;
    return String.join(", ", measures.subList(0, listed))
        + (more > 0 ? " and " + more + (more == 1 ? " more place" : " more places") : "");
  }
}
