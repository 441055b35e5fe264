package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.scoring.NoteContext;
import fingering.scoring.TimedTransition;
import fingering.tables.FingeringException;
import java.util.Arrays;
import java.util.Optional;

/**
 * The forward pass of the Viterbi algorithm (A. J. Viterbi, 1967, from memory) on a graph, without
 * a requirement: the lowest score at which each grip is reached, from the first moment to the last.
 * A score is penalty and cost as one number. Needs 8 bytes per grip.
 */
final class ForwardPass {
  /** The score of what no path reaches. */
  static final long UNREACHABLE = Long.MAX_VALUE;

  /**
   * The number of low bits of a score that hold the cost; the penalty is above them. Scores
   * therefore order paths by penalty first, then by cost. A passage whose costs or penalties may
   * not fit is refused.
   */
  private static final int COST_BITS = 44;

  private static final long MAX_COST = (1L << COST_BITS) - 1;

  /** One less than would fit, so that no score is {@link #UNREACHABLE}. */
  private static final long MAX_PENALTY = (1L << (Long.SIZE - 1 - COST_BITS)) - 2;

  private final LayeredGraph graph;

  /** Indexed by moment: the lowest score at which each grip is reached. */
  private final long[][] scores;

  private final NodeCosts[] nodes;

  /** Indexed by moment from the second: the costs of the edges that lead to it. */
  private final EdgeCosts[] edges;

  /** Indexed by moment: {@link #nodeScores}; null where not computed yet. */
  private final long[][] nodeScores;

  /** Indexed by moment: the number of its grips in the cache. */
  private final int[] numbers;

  /** Whether there are no excluded grips and no penalties. */
  private final boolean unrestricted;

  /** An upper bound on the cost of all paths so far. */
  private long costBound;

  /** An upper bound on the penalty of all paths so far. */
  private long penaltyBound;

  private ForwardPass(LayeredGraph graph) {
    this.graph = graph;
    scores = new long[graph.moments().size()][];
    nodes = new NodeCosts[scores.length];
    edges = new EdgeCosts[scores.length];
    nodeScores = new long[scores.length][];
    numbers = new int[scores.length];
    for (int m = 0; m < numbers.length; m++) {
      numbers[m] = graph.costs().number(graph.grips().get(m));
    }
    unrestricted = graph.excluded() == NodeFilter.NONE && graph.penalty() == Penalty.NONE;
  }

  /**
   * Runs the forward pass.
   *
   * @throws FingeringException if costs are so high that they may outweigh a penalty, or penalties
   *     so high that their sum may overflow
   */
  static ForwardPass of(LayeredGraph graph, Steps steps) {
    ForwardPass pass = new ForwardPass(graph);
    steps.take(1);
    pass.scores[0] = pass.nodeScores(0).clone();
    pass.refuseHighCosts(0);
    for (int m = 1; m < pass.scores.length; m++) {
      steps.take(pass.scores[m - 1].length);
      pass.scores[m] = pass.next(m);
      pass.refuseHighCosts(m);
    }
    return pass;
  }

  private void refuseHighCosts(int m) {
    costBound += nodes(m).max() + (m == 0 ? 0 : edges[m].max());
    if (costBound > MAX_COST) {
      throw new FingeringException(
          "with these weights a plan may cost more than %d points; divide all of them by ten"
              .formatted(MAX_COST));
    }
  }

  private void refuseHighPenalties(long highest) {
    if (highest > MAX_PENALTY - penaltyBound) {
      throw new FingeringException(
          "the passage is too long for the preferences of this brief; plan fewer measures");
    }
    penaltyBound += highest;
  }

  /** Scores that are not reached yet. */
  static long[] unreachable(int nodes) {
    long[] scores = new long[nodes];
    Arrays.fill(scores, UNREACHABLE);
    return scores;
  }

  private long[] next(int m) {
    ImmutableList<Grip> before = graph.grips().get(m - 1);
    ImmutableList<Grip> now = graph.grips().get(m);
    TimedTransition transition =
        TimedTransition.between(graph.moments().get(m - 1), graph.moments().get(m));
    edges[m] = graph.costs().of(transition, numbers[m - 1], numbers[m], before, now);
    long[] next = unreachable(now.size());
    edges[m].relax(scores[m - 1], next);
    if (unrestricted) {
      nodes(m).addTo(next);
    } else {
      addNodeScores(m, next);
    }
    return next;
  }

  private void addNodeScores(int m, long[] to) {
    long[] own = nodeScores(m);
    for (int j = 0; j < own.length; j++) {
      to[j] = plus(to[j], own[j]);
    }
  }

  /** The costs of the edges that lead to a moment, from the second. */
  EdgeCosts edges(int m) {
    return edges[m];
  }

  /**
   * The score of each grip of a moment by itself, {@link #UNREACHABLE} if it is excluded. Callers
   * must not change the array.
   */
  long[] nodeScores(int m) {
    if (nodeScores[m] == null) {
      NodeCosts costs = nodes(m);
      long[] own = new long[graph.grips().get(m).size()];
      long highest = 0;
      for (int j = 0; j < own.length; j++) {
        if (graph.excluded().at(m, j)) {
          own[j] = UNREACHABLE;
        } else {
          long penalty = graph.penalty().of(m, graph.grips().get(m).get(j));
          highest = Math.max(highest, penalty);
          own[j] = costs.cost(j) + (penalty << COST_BITS);
        }
      }
      refuseHighPenalties(highest);
      nodeScores[m] = own;
    }
    return nodeScores[m];
  }

  private NodeCosts nodes(int m) {
    if (nodes[m] == null) {
      NoteContext context = NoteContext.of(graph.moments().get(m));
      nodes[m] = graph.costs().of(context, numbers[m], graph.grips().get(m));
    }
    return nodes[m];
  }

  /** The sum of two scores; unreachable if either is. */
  static long plus(long score, long more) {
    return score == UNREACHABLE || more == UNREACHABLE ? UNREACHABLE : score + more;
  }

  /** The lowest score at which each grip of a moment is reached. */
  long[] scores(int moment) {
    return scores[moment];
  }

  /** The number of moments. */
  int moments() {
    return scores.length;
  }

  /** The grips of the best path that ends at a grip of the last moment. */
  private int[] backtrack(int grip) {
    int[] path = new int[scores.length];
    path[path.length - 1] = grip;
    for (int m = path.length - 1; m > 0; m--) {
      path[m - 1] = predecessor(m, path[m]);
    }
    return path;
  }

  /** The grip from which a grip is best reached, the first of equal ones. */
  private int predecessor(int m, int grip) {
    long score = scores[m][grip] - nodeScore(m, grip);
    for (int before = 0; before < scores[m - 1].length; before++) {
      if (scores[m - 1][before] != UNREACHABLE
          && scores[m - 1][before] + edges[m].cost(before, grip) == score) {
        return before;
      }
    }
    throw new IllegalStateException("grip " + grip + " of moment " + m + " has no predecessor");
  }

  /** The score of one grip by itself; avoids computing those of all grips of long passages. */
  private long nodeScore(int m, int grip) {
    return unrestricted ? nodes(m).cost(grip) : nodeScores(m)[grip];
  }

  /**
   * The best path; empty if exclusions leave none. Of equal paths, the first in the order of the
   * last grip, then of the one before, and so on.
   */
  Optional<Path> best() {
    int last = scores.length - 1;
    int end = -1;
    long lowest = UNREACHABLE;
    for (int j = 0; j < scores[last].length; j++) {
      if (scores[last][j] < lowest) {
        lowest = scores[last][j];
        end = j;
      }
    }
    return lowest == UNREACHABLE ? Optional.empty() : Optional.of(path(backtrack(end), lowest));
  }

  private Path path(int[] path, long score) {
    ImmutableList.Builder<Grip> grips = ImmutableList.builderWithExpectedSize(path.length);
    for (int m = 0; m < path.length; m++) {
      grips.add(graph.grips().get(m).get(path[m]));
    }
    return path(grips.build(), score);
  }

  /** The score of a path. */
  static long score(Path path) {
    return path.cost() + (path.penalty() << COST_BITS);
  }

  /** A path with the given score. */
  static Path path(ImmutableList<Grip> grips, long score) {
    long penalty = score >>> COST_BITS;
    return new Path(grips, score - (penalty << COST_BITS), penalty);
  }
}
