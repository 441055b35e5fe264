package fingering.search;

import static fingering.search.ForwardPass.UNREACHABLE;

import com.google.common.primitives.ImmutableIntArray;

/**
 * The lowest score from each grip of a corridor to the end in each state of one requirement, by a
 * backward pass. No path that has to meet this requirement and others too can do with less.
 */
final class RemainingScores {
  private final Automaton automaton;
  private final ForwardPass unconstrained;
  private final Corridor corridor;
  private final int states;

  /** Indexed by moment, by grip of the corridor times the number of states, plus the state. */
  private final long[][] toEnd;

  private RemainingScores(Automaton automaton, ForwardPass unconstrained, Corridor corridor) {
    this.automaton = automaton;
    this.unconstrained = unconstrained;
    this.corridor = corridor;
    states = automaton.states();
    toEnd = new long[unconstrained.moments()][];
  }

  static RemainingScores of(
      Automaton automaton, ForwardPass unconstrained, Corridor corridor, Steps steps) {
    RemainingScores scores = new RemainingScores(automaton, unconstrained, corridor);
    int last = scores.toEnd.length - 1;
    scores.toEnd[last] = scores.end(last);
    for (int m = last; m > 0; m--) {
      scores.toEnd[m - 1] = scores.before(m, steps);
    }
    return scores;
  }

  private long[] end(int last) {
    long[] end = new long[corridor.grips(last).length() * states];
    for (int node = 0; node < end.length; node++) {
      end[node] = automaton.satisfied(node % states) ? 0 : UNREACHABLE;
    }
    return end;
  }

  private long[] before(int m, Steps steps) {
    ImmutableIntArray from = corridor.grips(m - 1);
    ImmutableIntArray to = corridor.grips(m);
    EdgeCosts edges = unconstrained.edges(m);
    long[] own = unconstrained.nodeScores(m);
    long[] lowest = ForwardPass.unreachable(from.length() * states);
    long[] next = toEnd[m];
    for (int i = 0; i < from.length(); i++) {
      int first = i * states;
      for (int j = 0; j < to.length(); j++) {
        steps.take(states);
        int[] after = automaton.after(m, from.get(i), to.get(j));
        long cost = edges.cost(from.get(i), to.get(j)) + own[to.get(j)];
        for (int s = 0; s < states; s++) {
          long rest = next[j * states + after[s]];
          if (rest != UNREACHABLE) {
            lowest[first + s] = Math.min(lowest[first + s], rest + cost);
          }
        }
      }
    }
    return lowest;
  }

  /** The lowest score of a path that meets the requirement; unreachable if none is here. */
  long best() {
    long best = UNREACHABLE;
    ImmutableIntArray grips = corridor.grips(0);
    for (int j = 0; j < grips.length(); j++) {
      int state = automaton.first(grips.get(j));
      best =
          Math.min(
              best, ForwardPass.plus(unconstrained.nodeScores(0)[grips.get(j)], at(0, j, state)));
    }
    return best;
  }

  /** The number of states. */
  int states() {
    return states;
  }

  /**
   * The lowest score from after a grip to the end.
   *
   * @param at index into the grips of the corridor
   */
  long at(int moment, int at, int state) {
    return toEnd[moment][at * states + state];
  }
}
