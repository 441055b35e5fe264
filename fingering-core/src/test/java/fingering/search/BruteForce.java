package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.scoring.PacedNote;
import fingering.scoring.TimedTransition;
import fingering.tables.Position;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/** Walks every path through layers, one by one, and keeps the best. */
public final class BruteForce {
  /** Is told of every path: the index of its grip at each moment, and what it costs. */
  private interface Visitor {
    void meet(int[] path, long cost, long penalty);
  }

  private final LayeredGraph layers;
  private final Visitor visitor;
  private final List<long[][]> edges = new ArrayList<>();
  private final int[] path;

  private BruteForce(LayeredGraph layers, Visitor visitor) {
    this.layers = layers;
    this.visitor = visitor;
    path = new int[layers.moments().size()];
  }

  /** The least penalty, then the least cost, over all paths that show what is wanted. */
  public static Optional<Path> best(LayeredGraph layers, Predicate<List<Grip>> wanted) {
    List<Path> best = new ArrayList<>();
    visitAll(
        layers,
        (path, cost, penalty) -> {
          if ((best.isEmpty() || better(cost, penalty, best.get(0)))
              && wanted.test(gripsOf(layers, path))) {
            best.clear();
            best.add(new Path(gripsOf(layers, path), cost, penalty));
          }
        });
    return best.stream().findFirst();
  }

  /** The best of each kind of path that shows what is wanted, best first. */
  static List<Path> bestOfEachKind(
      LayeredGraph layers, Function<Grip, String> kind, Predicate<List<Grip>> wanted) {
    List<List<String>> kinds =
        layers.grips().stream().map(grips -> grips.stream().map(kind).toList()).toList();
    Map<List<String>, Path> best = new HashMap<>();
    visitAll(
        layers,
        (path, cost, penalty) -> {
          List<String> here = new ArrayList<>();
          for (int m = 0; m < path.length; m++) {
            here.add(kinds.get(m).get(path[m]));
          }
          Optional<Path> known = Optional.ofNullable(best.get(here));
          if (known.map(k -> better(cost, penalty, k)).orElse(true)
              && wanted.test(gripsOf(layers, path))) {
            best.put(here, new Path(gripsOf(layers, path), cost, penalty));
          }
        });
    return best.values().stream()
        .sorted(Comparator.comparingLong(Path::penalty).thenComparingLong(Path::cost))
        .toList();
  }

  private static boolean better(long cost, long penalty, Path than) {
    return penalty < than.penalty() || (penalty == than.penalty() && cost < than.cost());
  }

  private static void visitAll(LayeredGraph layers, Visitor visitor) {
    BruteForce search = new BruteForce(layers, visitor);
    search.measureEdges();
    // Backward from the last moment, so that of equals the one with the earlier last grip is met
    // first, then the one with the earlier last but one, and so on.
    search.walk(search.path.length - 1, 0, 0);
  }

  private void measureEdges() {
    for (int m = 1; m < path.length; m++) {
      ImmutableList<Grip> before = layers.grips().get(m - 1);
      ImmutableList<Grip> now = layers.grips().get(m);
      TimedTransition transition =
          TimedTransition.between(layers.moments().get(m - 1), layers.moments().get(m));
      long[][] costs = new long[before.size()][now.size()];
      for (int i = 0; i < before.size(); i++) {
        for (int j = 0; j < now.size(); j++) {
          costs[i][j] = layers.scoring().cost(transition, before.get(i), now.get(j));
        }
      }
      edges.add(costs);
    }
  }

  private void walk(int m, long cost, long penalty) {
    if (m < 0) {
      visitor.meet(path, cost, penalty);
      return;
    }
    ImmutableList<Grip> here = layers.grips().get(m);
    for (int j = 0; j < here.size(); j++) {
      long way = m == path.length - 1 ? 0 : edges.get(m)[j][path[m + 1]];
      path[m] = j;
      walk(
          m - 1,
          cost + way + layers.scoring().cost(PacedNote.of(layers.moments().get(m)), here.get(j)),
          penalty + layers.penalty().of(m, here.get(j)));
    }
  }

  private static ImmutableList<Grip> gripsOf(LayeredGraph layers, int[] indices) {
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
