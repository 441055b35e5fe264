package fingering.search;

/**
 * The costs of all edges between the grips of two moments, at a given time. Safe for use by many
 * threads.
 *
 * @param points the costs
 */
record EdgeCosts(CostMatrix points) {
  /** The cost of an edge. */
  long cost(int from, int to) {
    return points.get(from, to);
  }

  /** An upper bound on the cost of an edge. */
  long max() {
    return points.max();
  }

  /**
   * Relaxes all edges. Grips that the best grip dominates are skipped: every target is reached from
   * the best grip for less.
   *
   * @param before scores of the earlier grips, {@link ForwardPass#UNREACHABLE} if not reached
   * @param after scores of the later grips so far, which are lowered
   */
  void relax(long[] before, long[] after) {
    int best = 0;
    for (int i = 1; i < before.length; i++) {
      best = before[i] < before[best] ? i : best;
    }
    long lowest = before[best];
    if (lowest == ForwardPass.UNREACHABLE) {
      return;
    }
    // If another grip's score is higher by more than its margin, it is on no best path.
    long[] margins = points.excess(best);
    for (int i = 0; i < before.length; i++) {
      if (before[i] != ForwardPass.UNREACHABLE && before[i] - lowest <= margins[i]) {
        points.relax(i, before[i], after);
      }
    }
  }
}
