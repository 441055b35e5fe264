package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.scoring.Passing;
import fingering.scoring.Stroke;
import java.util.Arrays;
import java.util.OptionalInt;

/**
 * The least sums with which every grip is reached in every state of the requirement, from the first
 * moment to the last. A node is a grip with a state: index of the grip times number of states, plus
 * the state. Takes 8 bytes a node.
 */
final class ForwardPass {
  /** The sum of what cannot be reached. */
  static final long NONE = Long.MAX_VALUE;

  /** Penalty is counted in this many points, so that no cost outweighs it, whatever the weights. */
  private static final int PENALTY_BITS = 44;

  private final Layers layers;
  private final Requirement requirement;
  private final int states;

  /** The sums of the nodes of every moment. */
  private final long[][] sums;

  // Room for the grips from which a grip may best be reached.
  private long[] from = new long[64];
  private int[] left = new int[64];

  private ForwardPass(Layers layers, Requirement requirement) {
    this.layers = layers;
    this.requirement = requirement;
    states = requirement.states();
    sums = new long[layers.moments().size()][];
  }

  /** Passes through the layers. */
  static ForwardPass of(Layers layers, Requirement requirement) {
    ForwardPass pass = new ForwardPass(layers, requirement);
    pass.sums[0] = pass.first();
    for (int m = 1; m < pass.sums.length; m++) {
      pass.sums[m] = pass.next(m);
    }
    return pass;
  }

  private long[] first() {
    ImmutableList<Grip> grips = layers.grips().get(0);
    long[] reached = unreached(grips.size() * states);
    long[] own = own(layers, 0);
    for (int j = 0; j < grips.size(); j++) {
      if (own[j] != NONE) {
        reached[j * states + requirement.next(0, 0, grips.get(j), grips.get(j))] = own[j];
      }
    }
    return reached;
  }

  private static long[] unreached(int nodes) {
    long[] sums = new long[nodes];
    Arrays.fill(sums, NONE);
    return sums;
  }

  private long[] next(int m) {
    long[] own = own(layers, m);
    long[] next = unreached(own.length * states);
    Passing passing = passing(m);
    EdgeCosts edges = edges(layers, passing, m);
    for (int s = 0; s < states; s++) {
      if (requirement.looksBack()) {
        reachLookingBack(m, s, passing.singing(), edges, own, next);
      } else {
        reach(m, s, passing.singing(), edges, own, next);
      }
    }
    for (int j = 0; j < own.length; j++) {
      for (int at = j * states; at < (j + 1) * states; at++) {
        next[at] = next[at] == NONE ? NONE : next[at] + own[j];
      }
    }
    return next;
  }

  /** Reaches every grip from one state, where the grip reached alone decides the next. */
  private void reach(int m, int state, long singing, EdgeCosts edges, long[] own, long[] next) {
    int many = worthLeaving(sums[m - 1], state, singing, edges);
    if (many == 0) {
      return;
    }
    ImmutableList<Grip> grips = layers.grips().get(m);
    for (int j = 0; j < own.length; j++) {
      if (own[j] != NONE) {
        int to = states == 1 ? j : j * states + next(m, state, grips.get(j), grips.get(j));
        next[to] = Math.min(next[to], edges.least(from, left, many, j, singing));
      }
    }
  }

  /**
   * Collects the grips from which another may best be reached in that state. A grip is left out if
   * even the dearest way from the best of all costs less than a way from it for nothing.
   */
  private int worthLeaving(long[] reached, int state, long singing, EdgeCosts edges) {
    int best = -1;
    int grips = reached.length / states;
    for (int i = 0; i < grips; i++) {
      long sum = reached[i * states + state];
      if (sum != NONE && (best < 0 || sum < reached[best * states + state])) {
        best = i;
      }
    }
    if (best < 0) {
      return 0;
    }
    if (from.length < grips) {
      from = new long[grips];
      left = new int[grips];
    }
    long most = reached[best * states + state] + edges.dearest(best, singing);
    int many = 0;
    for (int i = 0; i < grips; i++) {
      long sum = reached[i * states + state];
      from[many] = sum;
      left[many] = i;
      many += sum <= most ? 1 : 0;
    }
    return many;
  }

  /** Reaches every grip from one state, where the grip left has a say in the next. */
  private void reachLookingBack(
      int m, int state, long singing, EdgeCosts edges, long[] own, long[] next) {
    ImmutableList<Grip> before = layers.grips().get(m - 1);
    ImmutableList<Grip> now = layers.grips().get(m);
    for (int i = 0; i < before.size(); i++) {
      long sum = sums[m - 1][i * states + state];
      if (sum == NONE) {
        continue;
      }
      for (int j = 0; j < own.length; j++) {
        if (own[j] != NONE) {
          int to = j * states + next(m, state, before.get(i), now.get(j));
          next[to] = Math.min(next[to], sum + edges.cost(i, j, singing));
        }
      }
    }
  }

  private int next(int m, int state, Grip before, Grip now) {
    return requirement.next(state, m, before, now);
  }

  private Passing passing(int m) {
    return Passing.between(layers.moments().get(m - 1), layers.moments().get(m));
  }

  /** The costs of the ways to a moment, from the second. */
  static EdgeCosts edges(Layers layers, Passing passing, int m) {
    return layers.costs().of(passing, layers.grips().get(m - 1), layers.grips().get(m));
  }

  /** Cost and penalty of each grip of a moment by itself, as one sum; none of what is closed. */
  static long[] own(Layers layers, int m) {
    ImmutableList<Grip> grips = layers.grips().get(m);
    Stroke stroke = Stroke.of(layers.moments().get(m));
    NodeCosts costs = layers.costs().of(stroke, grips);
    long[] own = new long[grips.size()];
    for (int j = 0; j < own.length; j++) {
      own[j] = layers.closed().at(m, j) ? NONE : costs.cost(j, stroke.singing());
      if (own[j] != NONE && layers.penalty() != Penalty.NONE) {
        own[j] += layers.penalty().of(m, grips.get(j)) << PENALTY_BITS;
      }
    }
    return own;
  }

  /** Whether none of so many sums is that of something reached. */
  static boolean unreached(long[] sums, int from, int many) {
    for (int at = from; at < from + many; at++) {
      if (sums[at] != NONE) {
        return false;
      }
    }
    return true;
  }

  /** The sums of the nodes of a moment. */
  long[] sums(int moment) {
    return sums[moment];
  }

  /** The node at which the best path ends, or empty where none satisfies the requirement. */
  OptionalInt end() {
    long[] reached = sums[sums.length - 1];
    int best = -1;
    for (int at = 0; at < reached.length; at++) {
      if (reached[at] != NONE
          && requirement.satisfied(at % states)
          && (best < 0 || reached[at] < reached[best])) {
        best = at;
      }
    }
    return best < 0 ? OptionalInt.empty() : OptionalInt.of(best);
  }

  /** The nodes of the best way to a node of a moment, from the first moment to that one. */
  int[] way(int moment, int node) {
    int[] way = new int[moment + 1];
    way[moment] = node;
    for (int m = moment; m > 0; m--) {
      way[m - 1] = before(m, way[m]);
    }
    return way;
  }

  /** The node from which a node of a moment is best reached, the first among equals. */
  private int before(int m, int node) {
    int reached = node / states;
    Grip now = layers.grips().get(m).get(reached);
    Passing passing = passing(m);
    EdgeCosts edges = edges(layers, passing, m);
    long sum = sums[m][node] - own(layers, m)[reached];
    for (int at = 0; at < sums[m - 1].length; at++) {
      if (sums[m - 1][at] != NONE
          && sums[m - 1][at] + edges.cost(at / states, reached, passing.singing()) == sum
          && leadsTo(m, at, now, node % states)) {
        return at;
      }
    }
    throw new IllegalStateException("no way leads to node " + node + " of moment " + m);
  }

  private boolean leadsTo(int m, int node, Grip now, int state) {
    return states == 1
        || next(m, node % states, layers.grips().get(m - 1).get(node / states), now) == state;
  }

  /** The best path to a node of the last moment. */
  Path path(int node) {
    int last = layers.moments().size() - 1;
    int[] way = way(last, node);
    ImmutableList.Builder<Grip> grips = ImmutableList.builderWithExpectedSize(way.length);
    for (int m = 0; m <= last; m++) {
      grips.add(layers.grips().get(m).get(way[m] / states));
    }
    long sum = sums[last][node];
    long penalty = sum >>> PENALTY_BITS;
    return new Path(grips.build(), sum - (penalty << PENALTY_BITS), penalty);
  }
}
