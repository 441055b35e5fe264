package fingering.search;

import static fingering.search.ForwardPass.UNREACHABLE;

import com.google.common.primitives.ImmutableIntArray;

/**
 * The grips that lie on a path within a limit, without regard to requirements. A path that meets a
 * requirement costs no less, so a search for paths within the limit needs no other grips.
 */
final class Corridor {
  private final long limit;

  /** Indexed by moment: the indices of its grips in the corridor, ascending. */
  private final ImmutableIntArray[] grips;

  /** Indexed by moment and by grip of the corridor: the lowest score from after it to the end. */
  private final long[][] toEnd;

  private Corridor(long limit, int moments) {
    this.limit = limit;
    grips = new ImmutableIntArray[moments];
    toEnd = new long[moments][];
  }

  /** The corridor of the paths whose score is at most a limit, by a backward pass. */
  static Corridor of(ForwardPass pass, long limit, Steps steps) {
    Corridor corridor = new Corridor(limit, pass.moments());
    int last = pass.moments() - 1;
    corridor.put(pass, last, new long[pass.scores(last).length]);
    for (int m = last; m > 0; m--) {
      steps.take(pass.scores(m).length);
      corridor.put(pass, m - 1, corridor.before(pass, m));
    }
    return corridor;
  }

  /** Indexed by grip of the moment before: the lowest score from after it to the end. */
  private long[] before(ForwardPass pass, int m) {
    long[] reached = pass.scores(m - 1);
    long[] lowest = ForwardPass.unreachable(reached.length);
    EdgeCosts edges = pass.edges(m);
    for (int at = 0; at < grips[m].length(); at++) {
      int j = grips[m].get(at);
      long rest = pass.nodeScores(m)[j] + toEnd[m][at];
      for (int i = 0; i < lowest.length; i++) {
        lowest[i] = Math.min(lowest[i], edges.cost(i, j) + rest);
      }
    }
    return lowest;
  }

  private void put(ForwardPass pass, int m, long[] lowest) {
    long[] reached = pass.scores(m);
    int[] some = new int[lowest.length];
    long[] rest = new long[lowest.length];
    int count = 0;
    for (int j = 0; j < lowest.length; j++) {
      if (reached[j] != UNREACHABLE && lowest[j] <= limit - reached[j]) {
        some[count] = j;
        rest[count] = lowest[j];
        count++;
      }
    }
    grips[m] = ImmutableIntArray.copyOf(some).subArray(0, count).trimmed();
    toEnd[m] = rest;
  }

  /** The highest score of a path in the corridor. */
  long limit() {
    return limit;
  }

  /** The indices of the grips of a moment in the corridor, ascending. */
  ImmutableIntArray grips(int moment) {
    return grips[moment];
  }

  /**
   * The lowest score from after a grip to the end.
   *
   * @param at index into {@link #grips}
   */
  long toEnd(int moment, int at) {
    return toEnd[moment][at];
  }
}
