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
    for (int i = 0; i < before; i++) {
      points.put(i, costs.from(i));
    }
    times = costs.times();
  }

  /** The costs for the time available. */
  EdgeCosts at(TransitionTime time) {
    CostMatrix sum = points;
    for (MovementTimes each : times) {
      if (each.missing(time)) {
        sum = with(sum, each, each.charges(time));
      }
    }
    return new EdgeCosts(sum);
  }

  private static CostMatrix with(CostMatrix some, MovementTimes times, long[] charges) {
    CostMatrix sum = new CostMatrix(some.rows(), some.columns());
    long[] row = new long[some.columns()];
    for (int i = 0; i < some.rows(); i++) {
      some.copy(i, row);
      times.add(charges, i, row);
      sum.put(i, row);
    }
    return sum;
  }
}
