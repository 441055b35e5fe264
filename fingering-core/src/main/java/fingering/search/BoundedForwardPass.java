package fingering.search;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.Ints;
import fingering.fingerboard.Grip;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The least sums with which every grip is reached in every state of a requirement, for the paths
 * within a bound alone. States in which there are none take neither time nor room.
 */
final class BoundedForwardPass {
  private static final long NONE = ForwardPass.NONE;

  private final LayeredGraph layers;
  private final Automaton automaton;

  /** The pass through the same layers without the requirement. */
  private final ForwardPass free;

  private final CostBound bound;

  /** The states in which each moment is reached. */
  private final List<Reached> reached = new ArrayList<>();

  /** Where each state stands among those in which the moment in hand is reached; -1 where not. */
  private final int[] places;

  /** How a moment is reached. */
  private static final class Reached {
    /** The states in which it is, ascending. */
    final int[] states;

    /** For each of them the sum of every grip. */
    final long[][] sums;

    Reached(int[] states, long[][] sums) {
      this.states = states;
      this.sums = sums;
    }
  }

  private BoundedForwardPass(
      LayeredGraph layers, Automaton automaton, ForwardPass free, CostBound bound) {
    this.layers = layers;
    this.automaton = automaton;
    this.free = free;
    this.bound = bound;
    places = new int[automaton.states()];
    Arrays.fill(places, -1);
  }

  /** The best path that satisfies the requirement, or empty where none within the bound does. */
  static Optional<Path> best(
      LayeredGraph layers, Automaton automaton, ForwardPass free, CostBound bound) {
    BoundedForwardPass pass = new BoundedForwardPass(layers, automaton, free, bound);
    pass.reached.add(pass.first());
    for (int m = 1; m < layers.moments().size(); m++) {
      pass.reached.add(pass.next(m));
    }
    return pass.end();
  }

  private Reached first() {
    ImmutableList<Grip> grips = layers.grips().get(0);
    long[] most = mostBefore(0);
    List<Integer> states = new ArrayList<>();
    List<long[]> sums = new ArrayList<>();
    for (int j = 0; j < grips.size(); j++) {
      if (most[j] >= 0) {
        int state = automaton.after(0, grips.get(j), grips.get(j))[0];
        at(state, states, sums, grips.size())[j] = 0;
      }
    }
    return finished(0, states, sums);
  }

  private Reached next(int m) {
    Reached before = reached.get(m - 1);
    long[] most = mostBefore(m);
    int grips = most.length;
    List<Integer> states = new ArrayList<>();
    List<long[]> sums = new ArrayList<>();
    if (automaton.looksBack()) {
      reachLookingBack(m, before, most, states, sums);
    } else {
      int[][] after = automaton.after(m);
      long[] all = new long[grips];
      for (int k = 0; k < before.states.length; k++) {
        Arrays.fill(all, NONE);
        free.ways(m).reach(before.sums[k], all);
        for (int j = 0; j < grips; j++) {
          if (all[j] <= most[j]) {
            long[] to = at(after[j][before.states[k]], states, sums, grips);
            to[j] = Math.min(to[j], all[j]);
          }
        }
      }
    }
    return finished(m, states, sums);
  }

  /** The sums of a state, which are made where they are missing. */
  private long[] at(int state, List<Integer> states, List<long[]> sums, int grips) {
    if (places[state] < 0) {
      places[state] = sums.size();
      states.add(state);
      sums.add(ForwardPass.unreached(grips));
    }
    return sums.get(places[state]);
  }

  /** The highest sum with which each grip can be reached within the bound, itself not counted. */
  private long[] mostBefore(int m) {
    long[] own = free.own(m);
    long[] most = bound.most(m);
    for (int j = 0; j < most.length; j++) {
      most[j] = own[j] == NONE ? -1 : most[j] - own[j];
    }
    return most;
  }

  /** Adds what each grip costs by itself, and puts the states in order. */
  private Reached finished(int m, List<Integer> states, List<long[]> sums) {
    long[] own = free.own(m);
    int[] all = Ints.toArray(states);
    Arrays.sort(all);
    long[][] theirs = new long[all.length][];
    for (int k = 0; k < all.length; k++) {
      long[] sum = sums.get(places[all[k]]);
      for (int j = 0; j < own.length; j++) {
        sum[j] = ForwardPass.plus(sum[j], own[j]);
      }
      theirs[k] = sum;
    }
    for (int state : all) {
      places[state] = -1;
    }
    return new Reached(all, theirs);
  }

  /**
   * Reaches every grip from those in every state, where the grip left has a say too. {@link
   * ForwardPass} takes the same step without a bound: there a grip's states stand side by side,
   * since all are wanted; here each state stands alone, since most are never reached. A step that
   * served both would have to ask at every sum where it stands.
   */
  private void reachLookingBack(
      int m, Reached before, long[] most, List<Integer> states, List<long[]> sums) {
    ImmutableList<Grip> leaving = layers.grips().get(m - 1);
    ImmutableList<Grip> now = layers.grips().get(m);
    EdgeCostView ways = free.ways(m);
    for (int i = 0; i < leaving.size(); i++) {
      for (int j = 0; j < now.size(); j++) {
        int[] after = automaton.after(m, leaving.get(i), now.get(j));
        long way = ways.cost(i, j);
        for (int k = 0; k < before.states.length; k++) {
          if (before.sums[k][i] != NONE && before.sums[k][i] + way <= most[j]) {
            long[] to = at(after[before.states[k]], states, sums, now.size());
            to[j] = Math.min(to[j], before.sums[k][i] + way);
          }
        }
      }
    }
  }

  /** The best path, of whose last grips the first among equals is taken, and so on back. */
  private Optional<Path> end() {
    int last = layers.moments().size() - 1;
    Reached all = reached.get(last);
    int grip = -1;
    int state = -1;
    long least = NONE;
    for (int j = 0; j < layers.grips().get(last).size(); j++) {
      for (int k = 0; k < all.states.length; k++) {
        if (all.sums[k][j] < least && automaton.satisfied(all.states[k])) {
          least = all.sums[k][j];
          grip = j;
          state = k;
        }
      }
    }
    return least == NONE ? Optional.empty() : Optional.of(path(grip, state, least));
  }

  private Path path(int lastGrip, int lastState, long sum) {
    Grip[] grips = new Grip[reached.size()];
    int grip = lastGrip;
    int state = lastState;
    for (int m = grips.length - 1; m > 0; m--) {
      grips[m] = layers.grips().get(m).get(grip);
      long before = reached.get(m).sums[state][grip] - free.own(m)[grip];
      int node = before(m, grip, reached.get(m).states[state], before);
      grip = node / automaton.states();
      state = node % automaton.states();
    }
    grips[0] = layers.grips().get(0).get(grip);
    return ForwardPass.path(ImmutableList.copyOf(grips), sum);
  }

  /** Grip before times number of states, plus the place of the state before. */
  private int before(int m, int grip, int state, long sum) {
    Reached before = reached.get(m - 1);
    ImmutableList<Grip> leaving = layers.grips().get(m - 1);
    Grip now = layers.grips().get(m).get(grip);
    for (int i = 0; i < leaving.size(); i++) {
      long way = free.ways(m).cost(i, grip);
      for (int k = 0; k < before.states.length; k++) {
        if (before.sums[k][i] != NONE
            && before.sums[k][i] + way == sum
            && automaton.after(m, leaving.get(i), now)[before.states[k]] == state) {
          return i * automaton.states() + k;
        }
      }
    }
    throw new IllegalStateException("no way leads to grip " + grip + " of moment " + m);
  }
}
