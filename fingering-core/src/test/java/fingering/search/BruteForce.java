package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.scoring.Passing;
import fingering.tables.Position;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Walks every path through layers, one by one, and keeps the best. */
public final class BruteForce {
  private final Layers layers;
  private final Predicate<List<Grip>> wanted;
  private final List<long[][]> edges = new ArrayList<>();
  private final int[] path;
  private int[] best;
  private long bestCost;
  private long bestPenalty;

  private BruteForce(Layers layers, Predicate<List<Grip>> wanted) {
    this.layers = layers;
    this.wanted = wanted;
    path = new int[layers.moments().size()];
  }

  /** The least penalty, then the least cost, over all paths that show what is wanted. */
  public static Optional<Path> best(Layers layers, Predicate<List<Grip>> wanted) {
    BruteForce search = new BruteForce(layers, wanted);
    search.measureEdges();
    // Backward from the last moment, so that of equals the one with the earlier last grip is met
    // first, then the one with the earlier last but one, and so on.
    search.walk(search.path.length - 1, 0, 0);
    return search.best == null
        ? Optional.empty()
        : Optional.of(new Path(search.gripsOf(search.best), search.bestCost, search.bestPenalty));
  }

  private void measureEdges() {
    for (int m = 1; m < path.length; m++) {
      ImmutableList<Grip> before = layers.grips().get(m - 1);
      ImmutableList<Grip> now = layers.grips().get(m);
      Passing passing = Passing.between(layers.moments().get(m - 1), layers.moments().get(m));
      long[][] costs = new long[before.size()][now.size()];
      for (int i = 0; i < before.size(); i++) {
        for (int j = 0; j < now.size(); j++) {
          costs[i][j] = layers.scoring().cost(passing, before.get(i), now.get(j));
        }
      }
      edges.add(costs);
    }
  }

  private void walk(int m, long cost, long penalty) {
    if (m < 0) {
      boolean better =
          best == null || penalty < bestPenalty || (penalty == bestPenalty && cost < bestCost);
      if (better && wanted.test(gripsOf(path))) {
        best = path.clone();
        bestCost = cost;
        bestPenalty = penalty;
      }
      return;
    }
    ImmutableList<Grip> here = layers.grips().get(m);
    for (int j = 0; j < here.size(); j++) {
      long way = m == path.length - 1 ? 0 : edges.get(m)[j][path[m + 1]];
      path[m] = j;
      walk(
          m - 1,
          cost + way + layers.scoring().cost(layers.moments().get(m), here.get(j)),
          penalty + layers.penalty().applyAsLong(here.get(j)));
    }
  }

  private ImmutableList<Grip> gripsOf(int[] indices) {
    ImmutableList.Builder<Grip> grips = ImmutableList.builder();
    for (int m = 0; m < indices.length; m++) {
      grips.add(layers.grips().get(m).get(indices[m]));
    }
    return grips.build();
  }

  /** Whether so many stopped notes, one after another, are played without leaving the position. */
  public static boolean stays(List<Grip> path, Position position, int notes) {
    int stay = 0;
    for (Grip grip : path) {
      if (!grip.frame().position().equals(position)) {
        stay = 0;
        continue;
      }
      for (Placement placement : grip.placements()) {
        stay += placement.open() ? 0 : 1;
      }
      if (stay >= notes) {
        return true;
      }
    }
    return false;
  }
}
