package fingering.search;

import java.util.Optional;

/**
 * What every way from the grips of one moment to those of the next costs, whatever the pace of the
 * music. Safe for use by many threads.
 */
final class EdgeCosts {
  private final CostMatrix points;

  /** Points for each hundredth of a second of singing. */
  private final CostMatrix paced;

  /** Whether there are any of these. */
  private final boolean paces;

  /**
   * Costs made of these.
   *
   * @param paced points for each hundredth of a second of singing; empty where there are none
   */
  EdgeCosts(CostMatrix points, Optional<CostMatrix> paced) {
    this.points = points;
    this.paced = paced.orElse(points);
    paces = paced.isPresent();
  }

  /** The cost of the way from one grip to another where music sings so much. */
  long cost(int left, int reached, long slowness) {
    long cost = points.get(left, reached);
    return paces ? cost + slowness * paced.get(left, reached) : cost;
  }

  /** The most that an edge costs, or somewhat more. */
  long most(long slowness) {
    return paces ? points.most() + slowness * paced.most() : points.most();
  }

  /** Lowers the sums with which grips are reached to those of the ways from one of that sum. */
  void reach(int left, long sum, long slowness, long[] sums) {
    if (paces && slowness > 0) {
      points.lower(left, sum, slowness, paced, sums);
    } else {
      points.lower(left, sum, sums);
    }
  }

  /**
   * By grip left, how much dearer a way from one can be at the most than the way from that to the
   * same place. A grip whose sum is higher by more than that is worth leaving for no place.
   *
   * @param handicaps where they are put
   */
  void handicaps(int left, long slowness, long[] handicaps) {
    System.arraycopy(points.excess(left), 0, handicaps, 0, handicaps.length);
    if (paces && slowness > 0) {
      long[] more = paced.excess(left);
      for (int i = 0; i < handicaps.length; i++) {
        handicaps[i] += slowness * more[i];
      }
    }
  }
}
