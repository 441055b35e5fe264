package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.scoring.MovementTimes;
import fingering.scoring.TransitionCosts;
import fingering.scoring.TransitionTime;

/**
 * The costs of all edges between the grips of two moments, for any time. Computing it evaluates the
 * rules and takes long; adding the time gives {@link EdgeCosts}. Safe for use by many threads.
 */
final class UntimedEdgeCosts {
  /** Points if no time is missing. */
  private final CostMatrix points;

  private final ImmutableList<MovementTimes> times;

  /**
   * Computes the costs.
   *
   * @param before the number of earlier grips
   * @param now the number of later grips
   */
  UntimedEdgeCosts(TransitionCosts costs, int before, int now) {
    points = new CostMatrix(before, now);
    long[] row = new long[now];
    for (int i = 0; i < before; i++) {
      costs.find(i, row);
      points.put(i, row);
    }
    times = costs.times();
  }

  /** The costs for the time available. */
  EdgeCosts at(TransitionTime time) {
    CostMatrix sum = points;
    for (MovementTimes each : times) {
      if (each.missing(time)) {
        sum = sum.with(each, time);
      }
    }
    return new EdgeCosts(sum);
  }
}
