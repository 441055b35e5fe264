package fingering.search;

import java.util.Optional;

/**
 * The costs of all edges between the grips of two moments, at a given time but any pace. Safe for
 * use by many threads.
 */
final class EdgeCosts {
  private final CostMatrix points;

  /** Points for each hundredth of a second of slowness; unused unless {@link #hasPaced}. */
  private final CostMatrix paced;

  private final boolean hasPaced;

  /**
   * Costs from matrices.
   *
   * @param paced points for each hundredth of a second of slowness; empty if all are 0
   */
  EdgeCosts(CostMatrix points, Optional<CostMatrix> paced) {
    this.points = points;
    this.paced = paced.orElse(points);
    hasPaced = paced.isPresent();
  }

  /** The cost of an edge. */
  long cost(int from, int to, long slowness) {
    long cost = points.get(from, to);
    return hasPaced ? cost + slowness * paced.get(from, to) : cost;
  }

  /** An upper bound on the cost of an edge. */
  long max(long slowness) {
    return hasPaced ? points.max() + slowness * paced.max() : points.max();
  }

  /** Relaxes the edges from a grip with the given score. */
  void relax(int from, long score, long slowness, long[] scores) {
    if (hasPaced && slowness > 0) {
      points.relax(from, score, slowness, paced, scores);
    } else {
      points.relax(from, score, scores);
    }
  }

  /**
   * Indexed by other grip: an upper bound on how much more an edge from this grip costs than the
   * edge from the other to the same target. If the score of the other grip is higher by more than
   * that, the other is not on any best path.
   *
   * @param margins receives the bounds
   */
  void margins(int from, long slowness, long[] margins) {
    System.arraycopy(points.excess(from), 0, margins, 0, margins.length);
    if (hasPaced && slowness > 0) {
      long[] more = paced.excess(from);
      for (int i = 0; i < margins.length; i++) {
        margins[i] += slowness * more[i];
      }
    }
  }
}
