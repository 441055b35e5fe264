package fingering.audition;

import com.google.common.collect.ImmutableList;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.tables.FingeringException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What a piece costs by how much it shows, as far as it has been searched. To ask for more never
 * costs less, so that each search tells of others too: what asks for more costs as much at least,
 * and what the plan found shows costs as much at most. Not safe for use by many threads.
 */
final class PieceCosts {
  /** More than any plan costs. */
  static final long NEVER = Long.MAX_VALUE / 1024;

  /**
   * A plan that is known.
   *
   * @param plan the plan
   * @param reached the steps that it reaches
   */
  record Known(Plan plan, ImmutableList<Integer> reached) {}

  /**
   * A search that was made.
   *
   * @param asked the steps that were asked for
   * @param cost points of the best plan for it, or {@link #NEVER}
   */
  record Searched(ImmutableList<Integer> asked, long cost) {}

  private final AuditionPiece piece;
  private final ImmutableList<SkillScale> steps;
  private final List<Searched> searched = new ArrayList<>();
  private final List<Known> known = new ArrayList<>();

  PieceCosts(AuditionPiece piece, ImmutableList<SkillScale> steps) {
    this.piece = piece;
    this.steps = steps;
    known(piece.free());
    searched.add(
        new Searched(
            steps.stream().map(step -> 0).collect(ImmutableList.toImmutableList()),
            piece.free().total()));
  }

  AuditionPiece piece() {
    return piece;
  }

  /** The plans found, the piece's own cheapest first. */
  List<Known> plans() {
    return known;
  }

  /** The searches made, in their order; more are added at the end. */
  List<Searched> searches() {
    return searched;
  }

  private void known(Plan plan) {
    known.add(
        new Known(
            plan,
            steps.stream()
                .map(step -> piece.shows() ? step.reached(plan) : 0)
                .collect(ImmutableList.toImmutableList())));
  }

  /** The step of a skill that the cheapest plan reaches. */
  int reachedFreely(int skill) {
    return known.get(0).reached().get(skill);
  }

  /** So many steps of one skill and nothing of the others. */
  ImmutableList<Integer> alone(int skill, int step) {
    return IntStream.range(0, steps.size())
        .mapToObj(j -> j == skill ? step : 0)
        .collect(ImmutableList.toImmutableList());
  }

  /** The best plan known that shows so much. */
  Optional<Known> best(ImmutableList<Integer> asked) {
    return known.stream()
        .filter(one -> within(asked, one.reached()))
        .min(Comparator.comparingLong(one -> one.plan().total()));
  }

  private static boolean within(ImmutableList<Integer> some, ImmutableList<Integer> others) {
    return IntStream.range(0, some.size()).allMatch(j -> some.get(j) <= others.get(j));
  }

  /** Whether a search would tell nothing new. */
  boolean settled(ImmutableList<Integer> asked) {
    long least =
        searched.stream()
            .filter(one -> within(one.asked(), asked))
            .mapToLong(Searched::cost)
            .max()
            .orElseThrow();
    return least == NEVER || best(asked).map(one -> one.plan().total() == least).orElse(false);
  }

  /**
   * Makes sure that the cost of showing so much is known exactly.
   *
   * @throws FingeringException if that is more than the search can carry
   */
  void settle(ImmutableList<Integer> asked) {
    if (settled(asked)) {
      return;
    }
    Brief.Builder brief = piece.free().brief().toBuilder();
    IntStream.range(0, steps.size())
        .filter(j -> asked.get(j) > 0)
        .forEach(j -> brief.demanding(steps.get(j).at(asked.get(j))));
    Optional<Plan> plan = piece.planner().tryPlan(brief.build());
    plan.ifPresent(this::known);
    searched.add(new Searched(asked, plan.map(Plan::total).orElse(NEVER)));
  }
}
