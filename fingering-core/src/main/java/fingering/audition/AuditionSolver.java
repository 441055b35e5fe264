package fingering.audition;

import com.google.common.collect.ImmutableList;
import fingering.audition.PieceCosts.Known;
import fingering.audition.PieceCosts.Searched;
import fingering.audition.SkillAssignment.Choice;
import fingering.audition.SkillAssignment.Possibility;
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
final class AuditionSolver {
  /** Points go before the number of pieces that leave their own cheapest plan. */
  private static final long POINT = 1024;

  private final ImmutableList<PieceCosts> pieces;
  private final ImmutableList<Integer> tops;
  private final SkillLevels steps;

  /** For each piece and steps what that costs at least, by the searches looked at so far. */
  private final long[][] least;

  private final int[] lookedAt;

  AuditionSolver(ImmutableList<PieceCosts> pieces, ImmutableList<Integer> tops) {
    this.pieces = pieces;
    this.tops = tops;
    steps = new SkillLevels(tops);
    least = new long[pieces.size()][steps.size()];
    lookedAt = new int[pieces.size()];
  }

  /** The plans; empty where the pieces cannot show so much. */
  Optional<ImmutableList<Known>> solve() {
    while (true) {
      Optional<Choice> upper =
          SkillAssignment.cheapest(
              steps, pieces.stream().map(this::known).toList(), Long.MAX_VALUE);
      long most = upper.map(choice -> choice.cost() / POINT).orElse(Long.MAX_VALUE);
      List<ImmutableList<Possibility>> possible =
          IntStream.range(0, pieces.size()).mapToObj(i -> possible(i, most)).toList();
      Optional<Choice> lower = SkillAssignment.cheapest(steps, possible, most);
      if (lower.isEmpty()) {
        return Optional.empty();
      }
      if (lower.get().cost() == most) {
        return upper.map(this::plans);
      }
      settle(
          IntStream.range(0, pieces.size())
              .map(i -> possible.get(i).get(lower.get().chosen().get(i)).reached())
              .mapToObj(steps::get)
              .toList());
    }
  }

  /** For each cost that a piece has at least, the most that might be had for it. */
  private ImmutableList<Possibility> possible(int i, long most) {
    PieceCosts piece = pieces.get(i);
    long free = piece.piece().free().total();
    if (!piece.piece().shows()) {
      return ImmutableList.of(new Possibility(0, 0));
    }
    look(i);
    long[] costs = least[i];
    return IntStream.range(0, costs.length)
        .filter(s -> costs[s] < PieceCosts.NEVER && costs[s] - free <= most)
        .filter(s -> steps.rises(costs, s))
        .mapToObj(s -> new Possibility(s, costs[s] - free))
        .collect(ImmutableList.toImmutableList());
  }

  /** Looks at the searches of a piece that were made since. */
  private void look(int i) {
    List<Searched> searches = pieces.get(i).searches();
    for (; lookedAt[i] < searches.size(); lookedAt[i]++) {
      Searched one = searches.get(lookedAt[i]);
      int asked = steps.number(one.asked());
      // A search for more than is asked for here tells nothing of less.
      if (steps.get(asked).equals(one.asked())) {
        for (int s = asked; s < steps.size(); s++) {
          if (steps.within(asked, s)) {
            least[i][s] = Math.max(least[i][s], one.cost());
          }
        }
      }
    }
  }

  private ImmutableList<Possibility> known(PieceCosts piece) {
    ImmutableList.Builder<Possibility> all = ImmutableList.builder();
    long free = piece.piece().free().total();
    for (int p = 0; p < piece.plans().size(); p++) {
      Known one = piece.plans().get(p);
      all.add(
          new Possibility(
              steps.number(one.reached()), (one.plan().total() - free) * POINT + (p == 0 ? 0 : 1)));
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
