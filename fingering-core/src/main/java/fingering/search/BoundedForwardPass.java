package fingering.search;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.Ints;
import fingering.fingerboard.Grip;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The forward pass of the Viterbi algorithm on the product of a graph and an automaton, limited to
 * paths within a bound. States that no such path reaches take neither time nor memory.
 */
final class BoundedForwardPass {
  private static final long UNREACHABLE = ForwardPass.UNREACHABLE;

  private final LayeredGraph graph;
  private final Automaton automaton;

  /** The pass through the same graph without a requirement. */
  private final ForwardPass unconstrained;

  private final CostBound bound;

  /** The states and scores of each moment so far. */
  private final List<Layer> layers = new ArrayList<>();

  /**
   * Indexed by state: its index in the layer that is being computed; -1 if it is not reached yet.
   */
  private final int[] indices;

  private static final class Layer {
    /** The states that are reached, ascending. */
    final int[] states;

    /** The score of every grip, in the order of the states. */
    final long[][] scores;

    Layer(int[] states, long[][] scores) {
      this.states = states;
      this.scores = scores;
    }
  }

  private BoundedForwardPass(
      LayeredGraph graph, Automaton automaton, ForwardPass unconstrained, CostBound bound) {
    this.graph = graph;
    this.automaton = automaton;
    this.unconstrained = unconstrained;
    this.bound = bound;
    indices = new int[automaton.states()];
    Arrays.fill(indices, -1);
  }

  /** The best path that satisfies the requirement, or empty if there is none within the bound. */
  static Optional<Path> best(
      LayeredGraph graph, Automaton automaton, ForwardPass unconstrained, CostBound bound) {
    BoundedForwardPass pass = new BoundedForwardPass(graph, automaton, unconstrained, bound);
    pass.layers.add(pass.first());
    for (int m = 1; m < graph.moments().size(); m++) {
      pass.layers.add(pass.next(m));
    }
    return pass.end();
  }

  private Layer first() {
    ImmutableList<Grip> grips = graph.grips().get(0);
    long[] limits = limitsWithoutNode(0);
    List<Integer> states = new ArrayList<>();
    List<long[]> scores = new ArrayList<>();
    for (int j = 0; j < grips.size(); j++) {
      if (limits[j] >= 0) {
        int state = automaton.after(0, grips.get(j), grips.get(j))[0];
        scores(state, states, scores, grips.size())[j] = 0;
      }
    }
    return finished(0, states, scores);
  }

  private Layer next(int m) {
    Layer before = layers.get(m - 1);
    long[] limits = limitsWithoutNode(m);
    int grips = limits.length;
    List<Integer> states = new ArrayList<>();
    List<long[]> scores = new ArrayList<>();
    if (automaton.looksBack()) {
      relaxLookingBack(m, before, limits, states, scores);
    } else {
      int[][] after = automaton.after(m);
      long[] reached = new long[grips];
      for (int k = 0; k < before.states.length; k++) {
        Arrays.fill(reached, UNREACHABLE);
        unconstrained.edges(m).relax(before.scores[k], reached);
        for (int j = 0; j < grips; j++) {
          if (reached[j] <= limits[j]) {
            long[] to = scores(after[j][before.states[k]], states, scores, grips);
            to[j] = Math.min(to[j], reached[j]);
          }
        }
      }
    }
    return finished(m, states, scores);
  }

  /** The scores of a state, created on first use. */
  private long[] scores(int state, List<Integer> states, List<long[]> scores, int grips) {
    if (indices[state] < 0) {
      indices[state] = scores.size();
      states.add(state);
      scores.add(ForwardPass.unreachable(grips));
    }
    return scores.get(indices[state]);
  }

  /**
   * Indexed by grip: the highest score within the bound before its own is added; -1 if there is
   * none.
   */
  private long[] limitsWithoutNode(int m) {
    long[] nodes = unconstrained.nodeScores(m);
    long[] limits = bound.limits(m);
    for (int j = 0; j < limits.length; j++) {
      limits[j] = nodes[j] == UNREACHABLE ? -1 : limits[j] - nodes[j];
    }
    return limits;
  }

  /** Adds the node scores and sorts the states. */
  private Layer finished(int m, List<Integer> states, List<long[]> scores) {
    long[] nodes = unconstrained.nodeScores(m);
    int[] sorted = Ints.toArray(states);
    Arrays.sort(sorted);
    long[][] inOrder = new long[sorted.length][];
    for (int k = 0; k < sorted.length; k++) {
      long[] ofState = scores.get(indices[sorted[k]]);
      for (int j = 0; j < nodes.length; j++) {
        ofState[j] = ForwardPass.plus(ofState[j], nodes[j]);
      }
      inOrder[k] = ofState;
    }
    for (int state : sorted) {
      indices[state] = -1;
    }
    return new Layer(sorted, inOrder);
  }

  /**
   * Relaxes all edges in all states, if the automaton looks at the previous grip too. {@link
   * ForwardPass} has the same step without a bound. There the states of a grip are adjacent in
   * memory, because all are needed; here each state has its own array, because most are never
   * reached.
   */
  private void relaxLookingBack(
      int m, Layer before, long[] limits, List<Integer> states, List<long[]> scores) {
    ImmutableList<Grip> from = graph.grips().get(m - 1);
    ImmutableList<Grip> to = graph.grips().get(m);
    EdgeCosts edges = unconstrained.edges(m);
    for (int i = 0; i < from.size(); i++) {
      for (int j = 0; j < to.size(); j++) {
        int[] after = automaton.after(m, from.get(i), to.get(j));
        long edge = edges.cost(i, j);
        for (int k = 0; k < before.states.length; k++) {
          if (before.scores[k][i] != UNREACHABLE && before.scores[k][i] + edge <= limits[j]) {
            long[] ofState = scores(after[before.states[k]], states, scores, to.size());
            ofState[j] = Math.min(ofState[j], before.scores[k][i] + edge);
          }
        }
      }
    }
  }

  /** The best path. Of equal ones, the first in the order of the last grip, then the one before. */
  private Optional<Path> end() {
    int last = graph.moments().size() - 1;
    Layer layer = layers.get(last);
    int grip = -1;
    int stateIndex = -1;
    long best = UNREACHABLE;
    for (int j = 0; j < graph.grips().get(last).size(); j++) {
      for (int k = 0; k < layer.states.length; k++) {
        if (layer.scores[k][j] < best && automaton.satisfied(layer.states[k])) {
          best = layer.scores[k][j];
          grip = j;
          stateIndex = k;
        }
      }
    }
    return best == UNREACHABLE ? Optional.empty() : Optional.of(backtrack(grip, stateIndex, best));
  }

  private Path backtrack(int lastGrip, int lastStateIndex, long score) {
    Grip[] grips = new Grip[layers.size()];
    int grip = lastGrip;
    int stateIndex = lastStateIndex;
    for (int m = grips.length - 1; m > 0; m--) {
      grips[m] = graph.grips().get(m).get(grip);
      long before = layers.get(m).scores[stateIndex][grip] - unconstrained.nodeScores(m)[grip];
      int node = predecessor(m, grip, layers.get(m).states[stateIndex], before);
      grip = node / automaton.states();
      stateIndex = node % automaton.states();
    }
    grips[0] = graph.grips().get(0).get(grip);
    return ForwardPass.path(ImmutableList.copyOf(grips), score);
  }

  /** Index of the previous grip times the number of states, plus the index of its state. */
  private int predecessor(int m, int grip, int state, long score) {
    Layer before = layers.get(m - 1);
    ImmutableList<Grip> from = graph.grips().get(m - 1);
    Grip to = graph.grips().get(m).get(grip);
    for (int i = 0; i < from.size(); i++) {
      long edge = unconstrained.edges(m).cost(i, grip);
      for (int k = 0; k < before.states.length; k++) {
        if (before.scores[k][i] != UNREACHABLE
            && before.scores[k][i] + edge == score
            && automaton.after(m, from.get(i), to)[before.states[k]] == state) {
          return i * automaton.states() + k;
        }
      }
    }
    throw new IllegalStateException("grip " + grip + " of moment " + m + " has no predecessor");
  }
}
