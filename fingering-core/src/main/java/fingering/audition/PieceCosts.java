package fingering.audition;

import com.google.common.collect.ImmutableList;
import fingering.plan.Brief;
import fingering.plan.Plan;
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

  /** What was searched, and the cost of the best plan for it, or {@link #NEVER}. */
  private record Searched(ImmutableList<Integer> asked, long cost) {}

  private final Piece piece;
  private final ImmutableList<Step> steps;
  private final List<Searched> searched = new ArrayList<>();
  private final List<Known> known = new ArrayList<>();

  PieceCosts(Piece piece, ImmutableList<Step> steps) {
    this.piece = piece;
    this.steps = steps;
    known(piece.free());
    searched.add(new Searched(nothing(), piece.free().total()));
  }

  Piece piece() {
    return piece;
  }

  /** The plans found, the piece's own cheapest first. */
  ImmutableList<Known> plans() {
    return ImmutableList.copyOf(known);
  }

  ImmutableList<Integer> nothing() {
    return steps.stream().map(step -> 0).collect(ImmutableList.toImmutableList());
  }

  private void known(Plan plan) {
    known.add(
        new Known(
            plan,
            steps.stream()
                .map(step -> piece.shows() ? step.reached(plan) : 0)
                .collect(ImmutableList.toImmutableList())));
  }

  /** What it costs at least to show so much; {@link #NEVER} where it is known that it cannot be. */
  long atLeast(ImmutableList<Integer> asked) {
    return searched.stream()
        .filter(one -> Steps.within(one.asked(), asked))
        .mapToLong(Searched::cost)
        .max()
        .orElseThrow();
  }

  /** The best plan known that shows so much. */
  Optional<Known> best(ImmutableList<Integer> asked) {
    return known.stream()
        .filter(one -> Steps.within(asked, one.reached()))
        .min(Comparator.comparingLong(one -> one.plan().total()));
  }

  /** Whether a search would tell nothing new. */
  boolean settled(ImmutableList<Integer> asked) {
    long least = atLeast(asked);
    return least == NEVER || best(asked).map(one -> one.plan().total() == least).orElse(false);
  }

  /** Makes sure that the cost of showing so much is known exactly. */
  void settle(ImmutableList<Integer> asked) {
    if (settled(asked)) {
      return;
    }
    Brief own = piece.free().brief();
    Brief.Builder brief = own.toBuilder();
    IntStream.range(0, steps.size())
        .filter(j -> asked.get(j) > 0)
        .forEach(j -> brief.demanding(steps.get(j).at(asked.get(j))));
    Optional<Plan> plan = piece.planner().tryPlan(brief.build());
    plan.ifPresent(this::known);
    searched.add(new Searched(asked, plan.map(Plan::total).orElse(NEVER)));
  }
}
