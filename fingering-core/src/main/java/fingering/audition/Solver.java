package fingering.audition;

import com.google.common.collect.ImmutableList;
import fingering.audition.Allotment.Choice;
import fingering.audition.Allotment.Possibility;
import fingering.audition.PieceCosts.Known;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds the plans of all pieces that together reach some steps at the least cost, exactly. What is
 * allotted by what each piece costs at least is compared with what the plans known so far can do;
 * where it is less, the pieces that it relies on are searched, until both are the same. Each round
 * settles something that was open, so that it ends; as a rule after a few.
 */
final class Solver {
  /** Points go before the number of pieces that leave their own cheapest plan. */
  private static final long POINT = 1024;

  private final ImmutableList<PieceCosts> pieces;
  private final ImmutableList<Integer> tops;
  private final Steps steps;

  Solver(ImmutableList<PieceCosts> pieces, ImmutableList<Integer> tops) {
    this.pieces = pieces;
    this.tops = tops;
    steps = new Steps(tops);
  }

  /** The plans; empty where the pieces cannot show so much. */
  Optional<ImmutableList<Known>> solve() {
    while (true) {
      List<ImmutableList<Possibility>> least = pieces.stream().map(this::least).toList();
      Optional<Choice> lower = Allotment.cheapest(steps, least);
      if (lower.isEmpty()) {
        return Optional.empty();
      }
      Optional<Choice> upper =
          Allotment.cheapest(steps, pieces.stream().map(Solver::known).toList());
      if (upper.isPresent() && upper.get().cost() / POINT == lower.get().cost()) {
        return Optional.of(plans(upper.get()));
      }
      settle(
          IntStream.range(0, least.size())
              .mapToObj(i -> least.get(i).get(lower.get().chosen().get(i)).reached())
              .toList());
    }
  }

  /** For each cost that a piece has at least, the most that might be had for it. */
  private ImmutableList<Possibility> least(PieceCosts piece) {
    if (!piece.piece().shows()) {
      return ImmutableList.of(new Possibility(piece.nothing(), 0));
    }
    long free = piece.piece().free().total();
    long[] costs = new long[steps.size()];
    for (int s = 0; s < costs.length; s++) {
      costs[s] = piece.atLeast(steps.get(s));
    }
    return IntStream.range(0, costs.length)
        .filter(s -> costs[s] < PieceCosts.NEVER)
        .filter(s -> steps.above(s).stream().allMatch(above -> costs[above] > costs[s]))
        .mapToObj(s -> new Possibility(steps.get(s), costs[s] - free))
        .collect(ImmutableList.toImmutableList());
  }

  private static ImmutableList<Possibility> known(PieceCosts piece) {
    ImmutableList.Builder<Possibility> all = ImmutableList.builder();
    ImmutableList<Known> plans = piece.plans();
    for (int p = 0; p < plans.size(); p++) {
      long extra = plans.get(p).plan().total() - plans.get(0).plan().total();
      all.add(new Possibility(plans.get(p).reached(), extra * POINT + (p == 0 ? 0 : 1)));
    }
    return all.build();
  }

  private ImmutableList<Known> plans(Choice choice) {
    return IntStream.range(0, pieces.size())
        .mapToObj(i -> pieces.get(i).plans().get(choice.chosen().get(i)))
        .collect(ImmutableList.toImmutableList());
  }

  /** Searches what was allotted, without what the others make needless. */
  private void settle(List<ImmutableList<Integer>> allotted) {
    List<List<Integer>> needed = new ArrayList<>();
    allotted.forEach(one -> needed.add(new ArrayList<>(one)));
    // What is not settled yet is spared first.
    for (boolean settled : new boolean[] {false, true}) {
      for (int i = 0; i < pieces.size(); i++) {
        if (pieces.get(i).settled(allotted.get(i)) == settled) {
          spare(needed, i);
        }
      }
    }
    for (int i = 0; i < pieces.size(); i++) {
      pieces.get(i).settle(ImmutableList.copyOf(needed.get(i)));
    }
  }

  private void spare(List<List<Integer>> needed, int piece) {
    for (int j = 0; j < tops.size(); j++) {
      int skill = j;
      int all = needed.stream().mapToInt(one -> one.get(skill)).sum();
      int own = needed.get(piece).get(j);
      needed.get(piece).set(j, Math.max(0, own - Math.max(0, all - tops.get(j))));
    }
  }
}
