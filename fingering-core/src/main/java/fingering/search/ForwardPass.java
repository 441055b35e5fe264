package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.scoring.Passing;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;

/**
 * The least sums with which every grip is reached in every state of the requirement, from the first
 * moment to the last. A node is a grip with a state: index of the grip times number of states, plus
 * the state.
 */
final class ForwardPass {
  /** The sum of what cannot be reached. */
  static final long NONE = Long.MAX_VALUE;

  /** Penalty is counted in this many points, so that no cost outweighs it, whatever the weights. */
  private static final int PENALTY_BITS = 44;

  private final Layers layers;
  private final Requirement requirement;

  /** For the nodes of each moment from the second, the node before. */
  private final List<int[]> origins;

  /** The sums of every moment, or of the last alone. */
  private final List<long[]> sums;

  private ForwardPass(
      Layers layers, Requirement requirement, List<int[]> origins, List<long[]> sums) {
    this.layers = layers;
    this.requirement = requirement;
    this.origins = origins;
    this.sums = sums;
  }

  /**
   * Passes through the layers.
   *
   * @param keepsSums whether the sums of every moment are kept, at 8 bytes a node, or those of the
   *     last alone
   */
  static ForwardPass of(Layers layers, Requirement requirement, boolean keepsSums) {
    int states = requirement.states();
    int size = layers.moments().size();
    List<int[]> origins = new ArrayList<>(size);
    List<long[]> sums = new ArrayList<>();
    long[] reached = first(layers, requirement);
    for (int m = 1; m < size; m++) {
      if (keepsSums) {
        sums.add(reached);
      }
      ImmutableList<Grip> before = layers.grips().get(m - 1);
      ImmutableList<Grip> now = layers.grips().get(m);
      Moment moment = layers.moments().get(m);
      Passing passing = Passing.between(layers.moments().get(m - 1), moment);
      long[] next = new long[now.size() * states];
      int[] origin = new int[now.size() * states];
      Arrays.fill(next, NONE);
      for (int j = 0; j < now.size(); j++) {
        Grip grip = now.get(j);
        for (int i = 0; i < before.size(); i++) {
          if (unreached(reached, i * states, states)) {
            continue;
          }
          long edge = layers.scoring().cost(passing, before.get(i), grip);
          for (int s = 0; s < states; s++) {
            long sum = reached[i * states + s];
            if (sum == NONE) {
              continue;
            }
            int to = j * states + requirement.next(s, m, before.get(i), grip);
            if (sum + edge < next[to]) {
              next[to] = sum + edge;
              origin[to] = i * states + s;
            }
          }
        }
        long own = nodeCost(layers, m, grip);
        for (int s = 0; s < states; s++) {
          if (next[j * states + s] != NONE) {
            next[j * states + s] += own;
          }
        }
      }
      origins.add(origin);
      reached = next;
    }
    sums.add(reached);
    return new ForwardPass(layers, requirement, origins, sums);
  }

  private static long[] first(Layers layers, Requirement requirement) {
    ImmutableList<Grip> grips = layers.grips().get(0);
    int states = requirement.states();
    long[] reached = new long[grips.size() * states];
    Arrays.fill(reached, NONE);
    for (int j = 0; j < grips.size(); j++) {
      reached[j * states + requirement.next(0, 0, grips.get(j), grips.get(j))] =
          nodeCost(layers, 0, grips.get(j));
    }
    return reached;
  }

  /** Cost and penalty of a grip by itself, as one sum. */
  static long nodeCost(Layers layers, int m, Grip grip) {
    return layers.scoring().cost(layers.moments().get(m), grip)
        + (layers.penalty().of(m, grip) << PENALTY_BITS);
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

  /** The sums of the nodes of a moment; of moments other than the last only where kept. */
  long[] sums(int moment) {
    return sums.get(sums.size() - layers.moments().size() + moment);
  }

  /** The node at which the best path ends, or empty where none satisfies the requirement. */
  OptionalInt end() {
    long[] reached = sums.get(sums.size() - 1);
    int states = requirement.states();
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
      way[m - 1] = origins.get(m - 1)[way[m]];
    }
    return way;
  }

  /** The best path to a node of the last moment. */
  Path path(int node) {
    int last = layers.moments().size() - 1;
    int[] way = way(last, node);
    ImmutableList.Builder<Grip> grips = ImmutableList.builderWithExpectedSize(way.length);
    for (int m = 0; m <= last; m++) {
      grips.add(layers.grips().get(m).get(way[m] / requirement.states()));
    }
    long sum = sums(last)[node];
    long penalty = sum >>> PENALTY_BITS;
    return new Path(grips.build(), sum - (penalty << PENALTY_BITS), penalty);
  }
}
