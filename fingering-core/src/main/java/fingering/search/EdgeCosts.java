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
   * Relaxes all edges.
   *
   * @param before scores of the earlier grips, {@link ForwardPass#UNREACHABLE} if not reached
   * @param after scores of the later grips so far, which are lowered
   */
  void relax(long[] before, long[] after) {
    for (int i = 0; i < before.length; i++) {
      if (before[i] != ForwardPass.UNREACHABLE) {
        points.relax(i, before[i], after);
      }
    }
  }
}
