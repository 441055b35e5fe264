package fingering.search;

import static fingering.search.ForwardPass.UNREACHABLE;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableIntArray;
import fingering.fingerboard.Grip;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Optional;

/**
 * The forward pass of the Viterbi algorithm on the product of a graph and an automaton, limited to
 * paths within a bound. A node is a grip with a state. Nodes that no such path reaches take neither
 * time nor memory; the others take 12 bytes.
 */
final class BoundedForwardPass {
  private final LayeredGraph graph;
  private final Automaton automaton;

  /** The pass through the same graph without a requirement. */
  private final ForwardPass unconstrained;

  private final Corridor corridor;

  /** What each part of the requirement needs to the end, the lowest digit of a state first. */
  private final ImmutableList<RemainingScores> parts;

  private final long bound;

  /** The nodes of each moment so far. */
  private final Layer[] layers;

  /** Indexed by state: the lowest score of the grip that is being reached. */
  private final long[] reached;

  /** The states in which that grip is reached. */
  private final BitSet states;

  /** The nodes of a moment, in the order of their grips, then of their states. */
  static final class Layer {
    /** The indices of the grips that are reached, ascending. */
    final int[] grips;

    /** Indexed by index into {@link #grips}: its first node; then the number of nodes. */
    final int[] first;

    /** Indexed by node. */
    final int[] states;

    /** Indexed by node: the lowest score at which it is reached, including its own. */
    final long[] scores;

    Layer(int[] grips, int[] first, int[] states, long[] scores) {
      this.grips = grips;
      this.first = first;
      this.states = states;
      this.scores = scores;
    }

    int size() {
      return states.length;
    }

    /** The index into {@link #grips} of the grip of a node. */
    int gripOf(int node) {
      int found = Arrays.binarySearch(first, node);
      return found >= 0 ? found : -found - 2;
    }
  }

  /** Selects grips by their index. */
  interface Allowed {
    boolean at(int moment, int grip);
  }

  BoundedForwardPass(
      LayeredGraph graph,
      Automaton automaton,
      ForwardPass unconstrained,
      Corridor corridor,
      ImmutableList<RemainingScores> parts,
      long bound) {
    this.graph = graph;
    this.automaton = automaton;
    this.unconstrained = unconstrained;
    this.corridor = corridor;
    this.parts = parts;
    this.bound = bound;
    layers = new Layer[graph.moments().size()];
    reached = ForwardPass.unreachable(automaton.states());
    states = new BitSet(automaton.states());
  }

  /** Runs the pass among the allowed grips. */
  BoundedForwardPass run(Allowed allowed, Steps steps) {
    for (int m = 0; m < layers.length; m++) {
      layers[m] = layer(m, allowed, steps);
    }
    return this;
  }

  /** The same pass through some of its grips, with a lower bound. */
  BoundedForwardPass among(Allowed allowed, long lowerBound, Steps steps) {
    return new BoundedForwardPass(graph, automaton, unconstrained, corridor, parts, lowerBound)
        .run(allowed, steps);
  }

  private Layer layer(int m, Allowed allowed, Steps steps) {
    ImmutableIntArray all = corridor.grips(m);
    LayerBuilder builder = new LayerBuilder(all.length());
    for (int at = 0; at < all.length(); at++) {
      steps.take(m == 0 ? 1 : layers[m - 1].size());
      if (allowed.at(m, all.get(at))) {
        long own = unconstrained.nodeScores(m)[all.get(at)];
        if (m == 0) {
          reach(automaton.first(all.get(at)), own);
        } else {
          reach(m, all.get(at), own, bound - corridor.toEnd(m, at));
        }
        emit(m, at, builder);
        builder.end(all.get(at));
      }
    }
    return builder.layer();
  }

  private void reach(int state, long score) {
    if (score < reached[state]) {
      reached[state] = score;
      states.set(state);
    }
  }

  /** Reaches a grip from all nodes of the moment before. */
  private void reach(int m, int grip, long own, long limit) {
    Layer before = layers[m - 1];
    EdgeCosts edges = unconstrained.edges(m);
    for (int i = 0; i < before.grips.length; i++) {
      int[] after = automaton.after(m, before.grips[i], grip);
      long more = edges.cost(before.grips[i], grip) + own;
      for (int node = before.first[i]; node < before.first[i + 1]; node++) {
        long score = before.scores[node] + more;
        if (score <= limit) {
          reach(after[before.states[node]], score);
        }
      }
    }
  }

  /** Adds the nodes of a grip that are within the bound. */
  private void emit(int m, int at, LayerBuilder builder) {
    for (int state = states.nextSetBit(0); state >= 0; state = states.nextSetBit(state + 1)) {
      if (withinBound(m, at, state, reached[state])) {
        builder.add(state, reached[state]);
      }
      reached[state] = UNREACHABLE;
    }
    states.clear();
  }

  private boolean withinBound(int m, int at, int state, long score) {
    if (score > bound - corridor.toEnd(m, at)) {
      return false;
    }
    int digits = state;
    for (RemainingScores part : parts) {
      if (part.at(m, at, digits % part.states()) > bound - score) {
        return false;
      }
      digits /= part.states();
    }
    return true;
  }

  private static final class LayerBuilder {
    private final int[] grips;
    private final int[] first;
    private int[] states = new int[16];
    private long[] scores = new long[16];
    private int count;
    private int size;

    LayerBuilder(int most) {
      grips = new int[most];
      first = new int[most + 1];
    }

    void add(int state, long score) {
      if (size == states.length) {
        states = Arrays.copyOf(states, 2 * size);
        scores = Arrays.copyOf(scores, 2 * size);
      }
      states[size] = state;
      scores[size] = score;
      size++;
    }

    /** Ends the nodes of a grip; a grip without nodes is left out. */
    void end(int grip) {
      if (size > first[count]) {
        grips[count] = grip;
        count++;
        first[count] = size;
      }
    }

    Layer layer() {
      return new Layer(
          Arrays.copyOf(grips, count),
          Arrays.copyOf(first, count + 1),
          Arrays.copyOf(states, size),
          Arrays.copyOf(scores, size));
    }
  }

  Automaton automaton() {
    return automaton;
  }

  /** The nodes of a moment. */
  Layer layer(int moment) {
    return layers[moment];
  }

  /** The costs of the edges that lead to a moment, from the second. */
  EdgeCosts edges(int moment) {
    return unconstrained.edges(moment);
  }

  /** The score of a grip of a moment by itself. */
  long own(int moment, int grip) {
    return unconstrained.nodeScores(moment)[grip];
  }

  /** The nodes of the best path that ends at a node, from the first moment on. */
  int[] backtrack(int moment, int node) {
    int[] path = new int[moment + 1];
    path[moment] = node;
    for (int m = moment; m > 0; m--) {
      path[m - 1] = predecessor(m, path[m]);
    }
    return path;
  }

  /** The node from which a node is best reached, the first of equal ones. */
  private int predecessor(int m, int node) {
    Layer now = layers[m];
    Layer before = layers[m - 1];
    int grip = now.grips[now.gripOf(node)];
    for (int i = 0; i < before.grips.length; i++) {
      int[] after = automaton.after(m, before.grips[i], grip);
      long score = now.scores[node] - own(m, grip) - edges(m).cost(before.grips[i], grip);
      for (int from = before.first[i]; from < before.first[i + 1]; from++) {
        if (before.scores[from] == score && after[before.states[from]] == now.states[node]) {
          return from;
        }
      }
    }
    throw new IllegalStateException("node " + node + " of moment " + m + " has no predecessor");
  }

  /**
   * The best path that satisfies the requirement, or empty if there is none within the bound. Of
   * equal ones, the first in the order of the last grip, then of the one before, and so on.
   */
  Optional<Path> best() {
    Layer last = layers[layers.length - 1];
    int end = -1;
    for (int node = 0; node < last.size(); node++) {
      if (automaton.satisfied(last.states[node])
          && (end < 0 || last.scores[node] < last.scores[end])) {
        end = node;
      }
    }
    return end < 0 ? Optional.empty() : Optional.of(path(end));
  }

  private Path path(int end) {
    int last = layers.length - 1;
    int[] nodes = backtrack(last, end);
    ImmutableList.Builder<Grip> grips = ImmutableList.builderWithExpectedSize(layers.length);
    for (int m = 0; m <= last; m++) {
      Layer layer = layers[m];
      grips.add(graph.grips().get(m).get(layer.grips[layer.gripOf(nodes[m])]));
    }
    return ForwardPass.path(grips.build(), layers[last].scores[end]);
  }
}
