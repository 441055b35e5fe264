package fingering.search;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableLongArray;
import fingering.scoring.NoteContext;
import fingering.scoring.TimedTransition;

/** The costs of a graph straight from the rules, without the cache of the search. */
final class RuleCosts {
  private final LayeredGraph graph;

  /** Indexed by moment: the cost of each grip. */
  private final ImmutableList<ImmutableLongArray> grips;

  /** Indexed by moment: the music that leads to it; at the first moment, to itself. */
  private final ImmutableList<TimedTransition> transitions;

  RuleCosts(LayeredGraph graph) {
    this.graph = graph;
    ImmutableList.Builder<ImmutableLongArray> costs = ImmutableList.builder();
    ImmutableList.Builder<TimedTransition> between = ImmutableList.builder();
    for (int m = 0; m < graph.moments().size(); m++) {
      costs.add(
          graph.scoring().costs(NoteContext.of(graph.moments().get(m)), graph.grips().get(m)));
      between.add(
          TimedTransition.between(graph.moments().get(Math.max(0, m - 1)), graph.moments().get(m)));
    }
    grips = costs.build();
    transitions = between.build();
  }

  /** The cost of a grip by itself. */
  long grip(int m, int j) {
    return grips.get(m).get(j);
  }

  /** The cost of an edge to a moment from the one before; 0 at the first moment. */
  long edge(int m, int i, int j) {
    return m == 0
        ? 0
        : graph
            .scoring()
            .cost(transitions.get(m), graph.grips().get(m - 1).get(i), graph.grips().get(m).get(j));
  }
}
