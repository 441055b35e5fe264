package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.scoring.Scoring;
import fingering.scoring.TimedTransitionRule;
import fingering.scoring.Transition;
import fingering.scoring.TransitionCosts;
import fingering.scoring.TransitionTime;
import java.util.Optional;

/**
 * What every way from the grips of one moment to those of the next costs, whatever the time
 * between. It is what takes long to reckon; with the time it becomes {@link EdgeCosts}. Safe for
 * use by many threads.
 */
final class UntimedEdgeCosts {
  private final Scoring scoring;

  /** Whether a grip left is open strings alone. */
  private final boolean[] open;

  /** Points where there is time enough. */
  private final CostMatrix points;

  /** Points for each hundredth of a second of singing; empty where there are none. */
  private final Optional<CostMatrix> paced;

  /** By rule that charges haste, the microseconds that are needed. */
  private final ImmutableList<CostMatrix> needed;

  UntimedEdgeCosts(
      Scoring scoring,
      Transition transition,
      ImmutableList<Grip> left,
      ImmutableList<Grip> reached) {
    this.scoring = scoring;
    open = new boolean[left.size()];
    points = new CostMatrix(left.size(), reached.size());
    CostMatrix slowness = new CostMatrix(left.size(), reached.size());
    needed =
        scoring.timedRules().stream()
            .map(rule -> new CostMatrix(left.size(), reached.size()))
            .collect(ImmutableList.toImmutableList());
    TransitionCosts costs = scoring.costs(transition);
    for (int i = 0; i < left.size(); i++) {
      Grip from = left.get(i);
      open[i] = from.open();
      for (int j = 0; j < reached.size(); j++) {
        Grip to = reached.get(j);
        boolean shifts = costs.shifts(from, to);
        points.put(i, j, costs.untimed(from, to, shifts));
        slowness.put(i, j, costs.paced(from, to));
        for (int r = 0; r < needed.size(); r++) {
          needed.get(r).put(i, j, costs.needed(scoring.timedRules().get(r), from, to, shifts));
        }
      }
    }
    paced = Optional.of(slowness).filter(table -> !table.empty());
  }

  /** The same with the time that a passing leaves. */
  EdgeCosts in(TransitionTime time) {
    return new EdgeCosts(late(time) ? timed(time) : points, paced);
  }

  private boolean late(TransitionTime time) {
    for (CostMatrix each : needed) {
      for (int i = 0; i < open.length; i++) {
        if (each.most(i) > time.micros(open[i])) {
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
      CostMatrix timed = new CostMatrix(open.length, points.reached());
      for (int i = 0; i < open.length; i++) {
        for (int j = 0; j < points.reached(); j++) {
          long units = time.missing(rule, needed.get(r).get(i, j), open[i]);
          timed.put(i, j, sum.get(i, j) + units * scoring.timedWeights().get(r));
        }
      }
      sum = timed;
    }
    return sum;
  }
}
