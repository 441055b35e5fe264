package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.ToLongFunction;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * A layered graph as an integer program of ojAlgo: a flow of one unit from the first moment to the
 * last. Each edge is a 0-1 variable, and a requirement is a sum of these variables, without states.
 *
 * <p>Edges that lie only on paths above a given cost are left out; the lowest scores to their start
 * and from their end show which.
 */
final class FlowProgram {
  /** Amount that an edge contributes to a requirement. */
  interface Shown {
    /**
     * How much, 0 or more.
     *
     * @param moment index of the moment it leads to
     * @param before the grip it comes from; at the first moment the grip itself
     */
    long of(int moment, Grip before, Grip now);
  }

  private record Edge(int moment, int from, int to, Variable variable) {}

  private final LayeredGraph graph;
  private final RuleCosts costs;
  private final ExpressionsBasedModel model = new ExpressionsBasedModel();
  private final List<Edge> edges = new ArrayList<>();

  private FlowProgram(LayeredGraph graph, long most) {
    this.graph = graph;
    costs = new RuleCosts(graph);
    long[][] reached = reached();
    long[][] onward = onward();
    for (int m = 0; m < graph.grips().size(); m++) {
      for (int i = 0; i < (m == 0 ? 1 : grips(m - 1).size()); i++) {
        for (int j = 0; j < grips(m).size(); j++) {
          long cost = cost(m, i, j);
          if (!graph.excluded().at(m, j)
              && (m == 0 || !graph.excluded().at(m - 1, i))
              && (m == 0 ? 0 : reached[m - 1][i]) + cost + onward[m][j] <= most) {
            Variable variable = model.newVariable(m + "/" + i + "/" + j).binary().weight(cost);
            edges.add(new Edge(m, i, j, variable));
          }
        }
      }
    }
    flow();
  }

  /** The program of a graph, without edges that lie only on paths above a given cost. */
  static FlowProgram of(LayeredGraph graph, long most) {
    return new FlowProgram(graph, most);
  }

  private ImmutableList<Grip> grips(int m) {
    return graph.grips().get(m);
  }

  private long cost(int m, int i, int j) {
    return costs.grip(m, j) + costs.edge(m, i, j);
  }

  private long[][] reached() {
    long[][] sums = new long[graph.grips().size()][];
    for (int m = 0; m < sums.length; m++) {
      sums[m] = new long[grips(m).size()];
      for (int j = 0; j < sums[m].length; j++) {
        long least = m == 0 ? cost(0, 0, j) : Long.MAX_VALUE;
        for (int i = 0; m > 0 && i < sums[m - 1].length; i++) {
          least = Math.min(least, sums[m - 1][i] + cost(m, i, j));
        }
        sums[m][j] = least;
      }
    }
    return sums;
  }

  private long[][] onward() {
    long[][] sums = new long[graph.grips().size()][];
    int last = sums.length - 1;
    sums[last] = new long[grips(last).size()];
    for (int m = last - 1; m >= 0; m--) {
      sums[m] = new long[grips(m).size()];
      for (int i = 0; i < sums[m].length; i++) {
        long least = Long.MAX_VALUE;
        for (int j = 0; j < sums[m + 1].length; j++) {
          least = Math.min(least, cost(m + 1, i, j) + sums[m + 1][j]);
        }
        sums[m][i] = least;
      }
    }
    return sums;
  }

  /** One unit leaves the source, and each grip passes on what it receives. */
  private void flow() {
    Expression source = model.newExpression("source").level(1);
    List<List<Expression>> nodes = new ArrayList<>();
    for (int m = 0; m < graph.grips().size() - 1; m++) {
      List<Expression> here = new ArrayList<>();
      for (int j = 0; j < grips(m).size(); j++) {
        here.add(model.newExpression("node " + m + "/" + j).level(0));
      }
      nodes.add(here);
    }
    for (Edge edge : edges) {
      if (edge.moment() == 0) {
        source.set(edge.variable(), 1);
      } else {
        nodes.get(edge.moment() - 1).get(edge.from()).set(edge.variable(), -1);
      }
      if (edge.moment() < nodes.size()) {
        nodes.get(edge.moment()).get(edge.to()).set(edge.variable(), 1);
      }
    }
  }

  private long shown(Edge edge, Shown what) {
    int m = edge.moment();
    Grip now = grips(m).get(edge.to());
    return what.of(m, m == 0 ? now : grips(m - 1).get(edge.from()), now);
  }

  /** Requires that a path shows a total amount of something. */
  FlowProgram showing(String name, long least, Shown what) {
    Expression sum = model.newExpression(name).lower(least);
    add(sum, what, 1);
    return this;
  }

  private void add(Expression sum, Shown what, int sign) {
    for (Edge edge : edges) {
      long shown = shown(edge, what);
      if (shown > 0) {
        sum.set(edge.variable(), sign * shown);
      }
    }
  }

  /**
   * Requires that in at least one stretch of moments all grips fit and one of them stops a string.
   *
   * @param stretches each from its first moment to the one after its last
   */
  FlowProgram staying(
      List<int[]> stretches, ToLongFunction<Grip> fits, ToLongFunction<Grip> stops) {
    Expression one = model.newExpression("some stretch").lower(1);
    for (int[] stretch : stretches) {
      String name = "stretch from " + stretch[0];
      Variable taken = model.newVariable(name).binary();
      one.set(taken, 1);
      for (int m = stretch[0]; m < stretch[1]; m++) {
        int here = m;
        Expression stays = model.newExpression(name + " at " + m).lower(0).set(taken, -1);
        add(stays, (at, before, now) -> at == here ? fits.applyAsLong(now) : 0, 1);
      }
      Expression stopped = model.newExpression(name + " stops").lower(0).set(taken, -1);
      add(
          stopped,
          (at, before, now) -> at >= stretch[0] && at < stretch[1] ? stops.applyAsLong(now) : 0,
          1);
    }
    return this;
  }

  /** The cost of the cheapest path that meets all requirements; empty if there is none. */
  OptionalLong least() {
    Optimisation.Result result = model.minimise();
    return result.getState().isOptimal()
        ? OptionalLong.of(Math.round(result.getValue()))
        : OptionalLong.empty();
  }
}
