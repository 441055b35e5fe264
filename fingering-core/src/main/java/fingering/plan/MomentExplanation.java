package fingering.plan;

import com.google.common.collect.ImmutableList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Compares the fingering that a plan uses at a moment with an alternative.
 *
 * @param chosen the fingering of the plan
 * @param other the alternative, with the cheapest plan that uses it
 */
public record MomentExplanation(Alternative chosen, Alternative other) {

  /**
   * The difference in what a rule charges the two plans.
   *
   * @param rule id of the rule
   * @param name its name in print
   * @param points points of the other plan above the chosen one; never 0, below 0 if it is less
   */
  public record Difference(String rule, String name, long points) {}

  /**
   * A note with a different fingering.
   *
   * @param chosen the note in the chosen plan
   * @param other the note in the other plan
   */
  public record Change(PlannedNote chosen, PlannedNote other) {}

  /**
   * Checks the components.
   *
   * @throws IllegalArgumentException if the two are for different moments or passages
   */
  public MomentExplanation {
    if (chosen.moment() != other.moment()
        || !chosen.plan().passage().equals(other.plan().passage())) {
      throw new IllegalArgumentException("alternatives for different moments cannot be compared");
    }
  }

  /**
   * Points of the other plan above the chosen one. Below 0 only if the brief prefers some positions
   * and the other plan leaves them for more notes.
   */
  public long extraCost() {
    return other.plan().total() - chosen.plan().total();
  }

  /** The differences by rule, largest first; together they are {@link #extraCost}. */
  public ImmutableList<Difference> byRule() {
    Map<String, Difference> differences = new LinkedHashMap<>();
    other.plan().rules().forEach(rule -> add(differences, rule, rule.cost()));
    chosen.plan().rules().forEach(rule -> add(differences, rule, -rule.cost()));
    return differences.values().stream()
        .filter(difference -> difference.points() != 0)
        .sorted(Comparator.comparingLong(Difference::points).reversed())
        .collect(ImmutableList.toImmutableList());
  }

  private static void add(Map<String, Difference> differences, RuleCost rule, long points) {
    differences.merge(
        rule.rule(),
        new Difference(rule.rule(), rule.name(), points),
        (a, b) -> new Difference(a.rule(), a.name(), a.points() + b.points()));
  }

  /** The notes of other moments whose fingering differs, in score order. */
  public ImmutableList<Change> changesElsewhere() {
    ImmutableList<PlannedNote> before = chosen.plan().notes();
    ImmutableList<PlannedNote> after = other.plan().notes();
    return IntStream.range(0, before.size())
        .filter(i -> before.get(i).moment() != chosen.moment())
        .filter(i -> !before.get(i).sameFingering(after.get(i)))
        .mapToObj(i -> new Change(before.get(i), after.get(i)))
        .collect(ImmutableList.toImmutableList());
  }

  /** The notes to which the hand shifts only in the other plan, in score order. */
  public ImmutableList<PlannedNote> shiftsAdded() {
    return shiftsOnlyIn(other.plan(), chosen.plan());
  }

  /** The notes to which the hand shifts only in the chosen plan, in score order. */
  public ImmutableList<PlannedNote> shiftsSaved() {
    return shiftsOnlyIn(chosen.plan(), other.plan());
  }

  private static ImmutableList<PlannedNote> shiftsOnlyIn(Plan one, Plan another) {
    return IntStream.range(0, one.notes().size())
        .filter(i -> one.notes().get(i).shift() && !another.notes().get(i).shift())
        .mapToObj(one.notes()::get)
        .collect(ImmutableList.toImmutableList());
  }
}
