package fingering.plan;

import com.google.common.collect.ImmutableList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Why a plan takes the notes of a moment as it does and not another way.
 *
 * @param chosen the way the plan takes them
 * @param other another way, with the best plan that takes them so
 */
public record MomentExplanation(Alternative chosen, Alternative other) {

  /**
   * What a rule charges the other plan more.
   *
   * @param rule id of the rule
   * @param name its name in print
   * @param points points more; below 0 where the other plan is charged less, never 0
   */
  public record Difference(String rule, String name, long points) {}

  /**
   * A note that is taken differently.
   *
   * @param chosen as the plan takes it
   * @param other as the other plan takes it
   */
  public record Change(PlannedNote chosen, PlannedNote other) {}

  /**
   * Checks the components.
   *
   * @throws IllegalArgumentException if the two ways are not of one moment of one passage
   */
  public MomentExplanation {
    if (chosen.moment() != other.moment()
        || !chosen.plan().passage().equals(other.plan().passage())) {
      throw new IllegalArgumentException("two ways of different moments cannot be compared");
    }
  }

  /**
   * Points that the other plan costs more. Below 0 only where the brief prefers some positions and
   * the other plan leaves them for more notes.
   */
  public long more() {
    return other.plan().total() - chosen.plan().total();
  }

  /** What each rule charges more or less; what costs more first, by size. Adds up to the whole. */
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

  /** The notes of other moments that the other plan takes differently, in score order. */
  public ImmutableList<Change> neighbours() {
    ImmutableList<PlannedNote> now = chosen.plan().notes();
    ImmutableList<PlannedNote> then = other.plan().notes();
    return IntStream.range(0, now.size())
        .filter(i -> now.get(i).moment() != chosen.moment())
        .filter(i -> !now.get(i).takenLike(then.get(i)))
        .mapToObj(i -> new Change(now.get(i), then.get(i)))
        .collect(ImmutableList.toImmutableList());
  }

  /** The notes to which the hand shifts in the other plan alone, in score order. */
  public ImmutableList<PlannedNote> shiftsAdded() {
    return shiftsMissing(other.plan(), chosen.plan());
  }

  /** The notes to which the hand shifts in the chosen plan alone, in score order. */
  public ImmutableList<PlannedNote> shiftsSpared() {
    return shiftsMissing(chosen.plan(), other.plan());
  }

  private static ImmutableList<PlannedNote> shiftsMissing(Plan from, Plan in) {
    return IntStream.range(0, from.notes().size())
        .filter(i -> from.notes().get(i).shift() && !in.notes().get(i).shift())
        .mapToObj(from.notes()::get)
        .collect(ImmutableList.toImmutableList());
  }
}
