package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;

/**
 * An upper bound on the score of a path. A node is outside the bound if even the best continuation
 * from it, without regard to requirements, exceeds the bound.
 */
final class CostBound {
  /** Indexed by moment and grip: the lowest score from after the grip to the end. */
  private final long[][] toEnd;

  private final long limit;

  private CostBound(long[][] toEnd, long limit) {
    this.toEnd = toEnd;
    this.limit = limit;
  }

  /** A bound that no path exceeds, by a backward pass through the graph. */
  static CostBound of(LayeredGraph graph, ForwardPass unconstrained) {
    int last = graph.moments().size() - 1;
    long[][] toEnd = new long[last + 1][];
    toEnd[last] = new long[graph.grips().get(last).size()];
    for (int m = last; m > 0; m--) {
      toEnd[m - 1] = before(graph, unconstrained, m, toEnd[m]);
    }
    return new CostBound(toEnd, ForwardPass.UNREACHABLE - 1);
  }

  private static long[] before(LayeredGraph graph, ForwardPass unconstrained, int m, long[] toEnd) {
    EdgeCosts edges = unconstrained.edges(m);
    long[] nodes = unconstrained.nodeScores(m);
    ImmutableList<Grip> before = graph.grips().get(m - 1);
    long[] fromNode = new long[nodes.length];
    for (int j = 0; j < nodes.length; j++) {
      fromNode[j] = ForwardPass.plus(nodes[j], toEnd[j]);
    }
    long[] lowest = new long[before.size()];
    for (int i = 0; i < lowest.length; i++) {
      lowest[i] = edges.toEnd(i, fromNode);
    }
    return lowest;
  }

  /** A bound at some points above a path, for paths with no higher penalty. */
  CostBound above(Path path, long points) {
    return new CostBound(toEnd, ForwardPass.score(path) + points);
  }

  /** Indexed by grip of a moment: the highest score within the bound; negative if there is none. */
  long[] limits(int moment) {
    long[] limits = new long[toEnd[moment].length];
    for (int i = 0; i < limits.length; i++) {
      limits[i] = toEnd[moment][i] == ForwardPass.UNREACHABLE ? -1 : limit - toEnd[moment][i];
    }
    return limits;
  }
}
