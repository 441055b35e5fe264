package fingering.audition;

import com.google.common.collect.ImmutableList;
import fingering.audition.PieceCosts.KnownPlan;
import fingering.audition.PieceCosts.SearchResult;
import fingering.audition.SkillAssignment.Assignment;
import fingering.audition.SkillAssignment.Option;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds the plans of all pieces that together reach the target levels at the least cost. The result
 * is exact. Each round solves the assignment twice, by {@link SkillAssignment}: over lower bounds
 * of the costs of each piece, and over the plans found so far, which give an upper bound. While the
 * bounds differ, the searches on which the lower one relies are run. Every round runs at least one
 * new search, so the loop ends, usually after a few rounds.
 */
final class AuditionSolver {
  /**
   * The weight of a point in the upper bound. At equal points, fewer pieces that leave their
   * cheapest plan win.
   */
  private static final long POINT = 1024;

  private final ImmutableList<PieceCosts> pieces;
  private final ImmutableList<Integer> targets;
  private final LevelCombinations combinations;

  /** A lower bound of the cost, by piece and combination, from the searches read so far. */
  private final long[][] lowerBounds;

  /** The number of searches of each piece that {@link #lowerBounds} includes. */
  private final int[] searchesRead;

  AuditionSolver(ImmutableList<PieceCosts> pieces, ImmutableList<Integer> targets) {
    this.pieces = pieces;
    this.targets = targets;
    combinations = new LevelCombinations(targets);
    lowerBounds = new long[pieces.size()][combinations.size()];
    searchesRead = new int[pieces.size()];
  }

  /** The plans of the pieces; empty if the pieces cannot reach the targets. */
  Optional<ImmutableList<KnownPlan>> solve() {
    while (true) {
      Optional<Assignment> upper =
          SkillAssignment.cheapest(
              combinations, pieces.stream().map(this::knownOptions).toList(), Long.MAX_VALUE);
      long upperBound = upper.map(one -> one.cost() / POINT).orElse(Long.MAX_VALUE);
      List<ImmutableList<Option>> options =
          IntStream.range(0, pieces.size()).mapToObj(i -> possibleOptions(i, upperBound)).toList();
      Optional<Assignment> lower = SkillAssignment.cheapest(combinations, options, upperBound);
      if (lower.isEmpty()) {
        return Optional.empty();
      }
      if (lower.get().cost() == upperBound) {
        return upper.map(this::plans);
      }
      search(
          IntStream.range(0, pieces.size())
              .map(i -> options.get(i).get(lower.get().chosen().get(i)).combination())
              .mapToObj(combinations::get)
              .toList());
    }
  }

  /** The combinations that a piece might reach at each lower bound, without dominated ones. */
  private ImmutableList<Option> possibleOptions(int i, long upperBound) {
    PieceCosts piece = pieces.get(i);
    long cheapest = piece.piece().cheapest().total();
    if (!piece.piece().counts()) {
      return ImmutableList.of(new Option(0, 0));
    }
    updateLowerBounds(i);
    long[] costs = lowerBounds[i];
    return IntStream.range(0, costs.length)
        .filter(c -> costs[c] < PieceCosts.INFEASIBLE && costs[c] - cheapest <= upperBound)
        .filter(c -> combinations.costsLessThanHigher(costs, c))
        .mapToObj(c -> new Option(c, costs[c] - cheapest))
        .collect(ImmutableList.toImmutableList());
  }

  /** Includes the searches of a piece that were run since the last update. */
  private void updateLowerBounds(int i) {
    List<SearchResult> searches = pieces.get(i).searches();
    for (; searchesRead[i] < searches.size(); searchesRead[i]++) {
      SearchResult result = searches.get(searchesRead[i]);
      int searched = combinations.number(result.levels());
      // A search beyond the targets says nothing about lower levels.
      if (combinations.get(searched).equals(result.levels())) {
        for (int c = searched; c < combinations.size(); c++) {
          if (combinations.atMost(searched, c)) {
            lowerBounds[i][c] = Math.max(lowerBounds[i][c], result.cost());
          }
        }
      }
    }
  }

  private ImmutableList<Option> knownOptions(PieceCosts piece) {
    ImmutableList.Builder<Option> options = ImmutableList.builder();
    long cheapest = piece.piece().cheapest().total();
    for (int p = 0; p < piece.plans().size(); p++) {
      KnownPlan known = piece.plans().get(p);
      options.add(
          new Option(
              combinations.number(known.levels()),
              (known.plan().total() - cheapest) * POINT + (p == 0 ? 0 : 1)));
    }
    return options.build();
  }

  private ImmutableList<KnownPlan> plans(Assignment assignment) {
    return IntStream.range(0, pieces.size())
        .mapToObj(i -> pieces.get(i).plans().get(assignment.chosen().get(i)))
        .collect(ImmutableList.toImmutableList());
  }

  /** Searches the levels assigned to each piece, without those beyond the targets. */
  private void search(List<ImmutableList<Integer>> assigned) {
    List<List<Integer>> levels = new ArrayList<>();
    assigned.forEach(one -> levels.add(new ArrayList<>(one)));
    // Pieces whose cost is not known exactly are reduced first.
    for (boolean exact : new boolean[] {false, true}) {
      for (int i = 0; i < pieces.size(); i++) {
        if (pieces.get(i).exact(assigned.get(i)) == exact) {
          removeExcess(levels, i);
        }
      }
    }
    for (int i = 0; i < pieces.size(); i++) {
      pieces.get(i).search(ImmutableList.copyOf(levels.get(i)));
    }
  }

  /** Lowers the levels of a piece as far as the other pieces still reach the targets with it. */
  private void removeExcess(List<List<Integer>> levels, int piece) {
    for (int j = 0; j < targets.size(); j++) {
      int skill = j;
      int total = levels.stream().mapToInt(one -> one.get(skill)).sum();
      int own = levels.get(piece).get(j);
      levels.get(piece).set(j, Math.max(0, own - Math.max(0, total - targets.get(j))));
    }
  }
}
