package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Every open path through a small graph that satisfies a requirement. */
final class EveryPath {
  /**
   * A path, with the states of the requirement.
   *
   * @param nodes by moment, the index of its grip times the number of states, plus the state
   */
  record Walked(Path path, ImmutableList<Integer> nodes) {
    /** Lowest penalty first, then lowest cost. */
    static final Comparator<Walked> BETTER =
        Comparator.<Walked>comparingLong(walked -> walked.path().penalty())
            .thenComparingLong(walked -> walked.path().cost());

    /** Of equal paths, in the order of the last node, then the one before, and so on. */
    static final Comparator<Walked> BEST_FIRST =
        BETTER.thenComparing((one, other) -> earlier(one.nodes, other.nodes));

    /** Compares two lists of nodes from the end of the first. */
    static int earlier(List<Integer> one, List<Integer> other) {
      return IntStream.iterate(one.size() - 1, m -> m >= 0, m -> m - 1)
          .map(m -> one.get(m).compareTo(other.get(m)))
          .filter(order -> order != 0)
          .findFirst()
          .orElse(0);
    }
  }

  private final LayeredGraph graph;
  private final Requirement requirement;
  private final RuleCosts costs;
  private final List<Walked> found = new ArrayList<>();
  private final List<Integer> nodes = new ArrayList<>();
  private final List<Grip> grips = new ArrayList<>();

  private EveryPath(LayeredGraph graph, Requirement requirement) {
    this.graph = graph;
    this.requirement = requirement;
    costs = new RuleCosts(graph);
  }

  static List<Walked> through(LayeredGraph graph, Requirement requirement) {
    EveryPath walk = new EveryPath(graph, requirement);
    walk.on(0, 0, 0, 0);
    walk.found.sort(Walked.BEST_FIRST);
    return walk.found;
  }

  private void on(int m, int state, long cost, long penalty) {
    if (m == graph.moments().size()) {
      if (requirement.satisfied(state)) {
        Path path = new Path(ImmutableList.copyOf(grips), cost, penalty);
        found.add(new Walked(path, ImmutableList.copyOf(nodes)));
      }
      return;
    }
    for (int j = 0; j < graph.grips().get(m).size(); j++) {
      if (!graph.excluded().at(m, j)) {
        Grip now = graph.grips().get(m).get(j);
        Grip before = m == 0 ? now : grips.get(m - 1);
        int after = requirement.next(state, requirement.symbol(m, before, now));
        grips.add(now);
        nodes.add(j * requirement.states() + after);
        on(m + 1, after, cost + cost(m, j), penalty + graph.penalty().of(m, now));
        grips.remove(m);
        nodes.remove(m);
      }
    }
  }

  private long cost(int m, int j) {
    int before = m == 0 ? 0 : nodes.get(m - 1) / requirement.states();
    return costs.grip(m, j) + costs.edge(m, before, j);
  }
}
