package fingering.search;

/**
 * The costs of all edges between the grips of two moments, at the pace of the music there.
 *
 * @param costs the costs at any pace
 * @param slowness how slow the music is there, in hundredths of a second
 */
record EdgeCostView(EdgeCosts costs, long slowness) {
  /** The cost of an edge. */
  long cost(int from, int to) {
    return costs.cost(from, to, slowness);
  }

  /** An upper bound on the cost of an edge. */
  long max() {
    return costs.max(slowness);
  }

  /**
   * Relaxes all edges. Grips that the best grip dominates are skipped: every target is reached from
   * the best grip for less.
   *
   * @param before scores of the earlier grips, {@link ForwardPass#UNREACHABLE} if not reached
   * @param after scores of the later grips so far, which are lowered
   * @return whether any earlier grip is reached
   */
  boolean relax(long[] before, long[] after) {
    int best = 0;
    for (int i = 1; i < before.length; i++) {
      best = before[i] < before[best] ? i : best;
    }
    long lowest = before[best];
    if (lowest == ForwardPass.UNREACHABLE) {
      return false;
    }
    long[] margins = new long[before.length];
    costs.margins(best, slowness, margins);
    for (int i = 0; i < before.length; i++) {
      if (before[i] != ForwardPass.UNREACHABLE && before[i] - lowest <= margins[i]) {
        costs.relax(i, before[i], slowness, after);
      }
    }
    return true;
  }

  /**
   * The lowest score from after an earlier grip to the end, or {@link ForwardPass#UNREACHABLE}.
   *
   * @param scores the lowest scores from each later grip to the end, including the grip; {@link
   *     ForwardPass#UNREACHABLE} if no path leads to the end
   */
  long toEnd(int from, long[] scores) {
    long lowest = ForwardPass.UNREACHABLE;
    for (int j = 0; j < scores.length; j++) {
      if (scores[j] != ForwardPass.UNREACHABLE) {
        lowest = Math.min(lowest, scores[j] + cost(from, j));
      }
    }
    return lowest;
  }
}
