package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.tables.Position;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/** Visits every path through a graph and keeps the best. */
public final class BruteForce {
  /** Receives every path: the index of its grip at each moment, and its cost. */
  private interface Visitor {
    void visit(int[] path, long cost, long penalty);
  }

  private final LayeredGraph graph;
  private final Visitor visitor;
  private final RuleCosts costs;
  private final List<long[][]> edges = new ArrayList<>();
  private final int[] path;

  private BruteForce(LayeredGraph graph, Visitor visitor) {
    this.graph = graph;
    this.visitor = visitor;
    costs = new RuleCosts(graph);
    path = new int[graph.moments().size()];
  }

  /** The path of the lowest penalty, then the lowest cost, among those that are wanted. */
  public static Optional<Path> best(LayeredGraph graph, Predicate<List<Grip>> wanted) {
    List<Path> best = new ArrayList<>();
    visitAll(
        graph,
        (path, cost, penalty) -> {
          if ((best.isEmpty() || better(cost, penalty, best.get(0)))
              && wanted.test(gripsOf(graph, path))) {
            best.clear();
            best.add(new Path(gripsOf(graph, path), cost, penalty));
          }
        });
    return best.stream().findFirst();
  }

  /** The best wanted path of each kind, best first. */
  static List<Path> bestOfEachKind(
      LayeredGraph graph, Function<Grip, String> kind, Predicate<List<Grip>> wanted) {
    List<List<String>> kinds =
        graph.grips().stream().map(grips -> grips.stream().map(kind).toList()).toList();
    Map<List<String>, Path> best = new HashMap<>();
    visitAll(
        graph,
        (path, cost, penalty) -> {
          List<String> here = new ArrayList<>();
          for (int m = 0; m < path.length; m++) {
            here.add(kinds.get(m).get(path[m]));
          }
          Optional<Path> known = Optional.ofNullable(best.get(here));
          if (known.map(k -> better(cost, penalty, k)).orElse(true)
              && wanted.test(gripsOf(graph, path))) {
            best.put(here, new Path(gripsOf(graph, path), cost, penalty));
          }
        });
    return best.values().stream()
        .sorted(Comparator.comparingLong(Path::penalty).thenComparingLong(Path::cost))
        .toList();
  }

  private static boolean better(long cost, long penalty, Path than) {
    return penalty < than.penalty() || (penalty == than.penalty() && cost < than.cost());
  }

  private static void visitAll(LayeredGraph graph, Visitor visitor) {
    BruteForce search = new BruteForce(graph, visitor);
    search.measureEdges();
    // Backward from the last moment, to visit equal paths in the order of the last grip, then the
    // one
    // before, and so on.
    search.walk(search.path.length - 1, 0, 0);
  }

  private void measureEdges() {
    for (int m = 1; m < path.length; m++) {
      long[][] table = new long[graph.grips().get(m - 1).size()][graph.grips().get(m).size()];
      for (int i = 0; i < table.length; i++) {
        for (int j = 0; j < table[i].length; j++) {
          table[i][j] = costs.edge(m, i, j);
        }
      }
      edges.add(table);
    }
  }

  private void walk(int m, long cost, long penalty) {
    if (m < 0) {
      visitor.visit(path, cost, penalty);
      return;
    }
    ImmutableList<Grip> here = graph.grips().get(m);
    for (int j = 0; j < here.size(); j++) {
      long edge = m == path.length - 1 ? 0 : edges.get(m)[j][path[m + 1]];
      path[m] = j;
      walk(m - 1, cost + edge + costs.grip(m, j), penalty + graph.penalty().of(m, here.get(j)));
    }
  }

  private static ImmutableList<Grip> gripsOf(LayeredGraph graph, int[] indices) {
    ImmutableList.Builder<Grip> grips = ImmutableList.builder();
    for (int m = 0; m < indices.length; m++) {
      grips.add(graph.grips().get(m).get(indices[m]));
    }
    return grips.build();
  }

  /** Whether a number of successive stopped notes is played without leaving a position. */
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
