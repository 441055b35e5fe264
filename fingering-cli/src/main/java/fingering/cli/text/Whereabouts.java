package fingering.cli.text;

import fingering.plan.Plan;
import fingering.plan.Stay;
import fingering.tables.Position;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Where the hand is in a plan, in words. */
public final class Whereabouts {
  private static final int LISTED = 6;

  /** Up to this number, all stays are named. */
  private static final int FEW = 4;

  private static final int LONGEST = 3;

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
      return plan.notesByPosition().size() == 1
          ? plan.notesByPosition().firstKey().display() + " position throughout"
          : stays(plan, Position.HALF::equals, "in half") + ", otherwise 1st";
    }
    if (plan.brief().returning()) {
      return "%d of %d stopped notes in %s position"
          .formatted(
              plan.notesInPreferred(),
              plan.stoppedNotes(),
              plan.brief().preferred().stream()
                  .map(Position::display)
                  .collect(Collectors.joining(" or ")));
    }
    String stays = stays(plan, position -> position.compareTo(Position.FIRST) > 0, "above 1st");
    return plan.notesByPosition().firstKey().compareTo(Position.FIRST) > 0
        ? stays
        : stays + ", otherwise 1st";
  }

  /**
   * The stays in some positions: {@code 3rd position in m. 17–24, 30}. Of many stays only the
   * longest are named.
   *
   * @param others where the stays are that are only counted
   */
  private static String stays(Plan plan, Predicate<Position> wanted, String others) {
    List<Stay> high = plan.stays().stream().filter(stay -> wanted.test(stay.position())).toList();
    List<Stay> named = high.size() <= FEW ? high : longest(high);
    Map<Position, Set<String>> measures = new LinkedHashMap<>();
    named.forEach(
        stay ->
            measures
                .computeIfAbsent(stay.position(), p -> new LinkedHashSet<>())
                .add(stay.measures()));
    int more = high.size() - named.size();
    return measures.entrySet().stream()
            .map(
                entry ->
                    "%s position in m. %s"
                        .formatted(entry.getKey().display(), String.join(", ", entry.getValue())))
            .collect(Collectors.joining(" and "))
        + (more > 0 ? " and " + more + " shorter stays " + others : "");
  }

  /** The longest stays, in score order. */
  private static List<Stay> longest(List<Stay> stays) {
    Set<Stay> longest =
        stays.stream()
            .sorted(Comparator.comparingInt(Stay::notes).reversed())
            .limit(LONGEST)
            .collect(Collectors.toSet());
    return stays.stream().filter(longest::contains).limit(LONGEST).toList();
  }

  /** The first measures, separated by commas, and the number of the others. */
  static String list(List<String> measures) {
    int listed = Math.min(measures.size(), LISTED);
    int more = measures.size() - listed;
    return String.join(", ", measures.subList(0, listed))
        + (more > 0 ? " and " + more + (more == 1 ? " more place" : " more places") : "");
  }
}
