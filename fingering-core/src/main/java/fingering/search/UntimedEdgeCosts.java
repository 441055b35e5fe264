package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.scoring.Scoring;
import fingering.scoring.TimedTransitionRule;
import fingering.scoring.Transition;
import fingering.scoring.TransitionCosts;
import fingering.scoring.TransitionTime;

/**
 * The costs of all edges between the grips of two moments, for any time. Computing it evaluates the
 * rules and takes long; adding the time gives {@link EdgeCosts}. Safe for use by many threads.
 */
final class UntimedEdgeCosts {
  private final Scoring scoring;

  /** Indexed by earlier grip: whether it is only open strings. */
  private final boolean[] open;

  /** Points if no time is missing. */
  private final CostMatrix points;

  /** Indexed by timed rule: the microseconds needed. */
  private final ImmutableList<CostMatrix> needed;

  UntimedEdgeCosts(
      Scoring scoring, Transition transition, ImmutableList<Grip> before, ImmutableList<Grip> now) {
    this.scoring = scoring;
    open = new boolean[before.size()];
    points = new CostMatrix(before.size(), now.size());
    needed =
        scoring.timedRules().stream()
            .map(rule -> new CostMatrix(before.size(), now.size()))
            .collect(ImmutableList.toImmutableList());
    TransitionCosts costs = scoring.costs(transition);
    for (int i = 0; i < before.size(); i++) {
      Grip from = before.get(i);
      open[i] = from.open();
      for (int j = 0; j < now.size(); j++) {
        Grip to = now.get(j);
        boolean shifts = costs.shifts(from, to);
        points.put(i, j, costs.untimed(from, to, shifts));
        for (int r = 0; r < needed.size(); r++) {
          TimedTransitionRule rule = scoring.timedRules().get(r);
          needed.get(r).put(i, j, costs.needed(rule, from, to, shifts));
        }
      }
    }
  }

  /** The costs for the time available. */
  EdgeCosts at(TransitionTime time) {
    return new EdgeCosts(isMissing(time) ? timed(time) : points);
  }

  private boolean isMissing(TransitionTime time) {
    for (CostMatrix each : needed) {
      for (int i = 0; i < open.length; i++) {
        if (each.max(i) > time.micros(open[i])) {
          return true;
        }
      }
    }
    return false;
  }

  private CostMatrix timed(TransitionTime time) {
    CostMatrix sum = points;
    for (int r = 0; r < needed.size(); r++) {
      TimedTransitionRule rule = scoring.timedRules().get(r);
      CostMatrix more = new CostMatrix(open.length, points.columns());
      for (int i = 0; i < open.length; i++) {
        for (int j = 0; j < points.columns(); j++) {
          long units = time.missing(rule, needed.get(r).get(i, j), open[i]);
          more.put(i, j, sum.get(i, j) + units * scoring.timedWeights().get(r));
        }
      }
      sum = more;
    }
    return sum;
  }
}
