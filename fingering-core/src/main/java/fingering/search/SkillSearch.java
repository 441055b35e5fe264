package fingering.search;

import com.google.common.collect.ImmutableList;
import java.util.Optional;

/**
 * Finds the best path that satisfies a requirement, searching first among paths that cost little
 * more than the best unconstrained path. A path found within a bound is optimal, because all paths
 * outside cost more; a tighter bound leaves less to search.
 */
final class SkillSearch {
  /** The first bound exceeds the cheapest cost by one part in 512; the difference then doubles. */
  private static final int FIRST_SHARE = 512;

  private final LayeredGraph graph;

  /** The pass through the graph without a requirement. */
  private final ForwardPass unconstrained;

  private final Path cheapest;
  private final CostBound bound;

  SkillSearch(LayeredGraph graph, ForwardPass unconstrained, Path cheapest) {
    this.graph = graph;
    this.unconstrained = unconstrained;
    this.cheapest = cheapest;
    bound = CostBound.of(graph, unconstrained);
  }

  /** The best path that satisfies the requirement, or empty if there is none. */
  Optional<Path> best(Requirement requirement) {
    ImmutableList<Requirement> parts = requirement.parts();
    long extra = 0;
    if (parts.size() > 1) {
      // Skills are usually shown in different places. Their extra costs then add up, which gives a
      // good first bound.
      for (Requirement part : parts) {
        Optional<Path> alone = best(part);
        if (alone.isEmpty()) {
          return alone;
        }
        extra += Math.max(0, alone.get().cost() - cheapest.cost());
      }
    }
    Automaton automaton = new Automaton(graph, requirement);
    long step = Math.max(1, cheapest.cost() / FIRST_SHARE);
    for (; extra <= Math.max(step, cheapest.cost()); extra = Math.max(2 * extra, step)) {
      Optional<Path> found =
          BoundedForwardPass.best(graph, automaton, unconstrained, bound.above(cheapest, extra));
      if (found.isPresent()) {
        return found;
      }
    }
    return BoundedForwardPass.best(graph, automaton, unconstrained, bound);
  }
}
