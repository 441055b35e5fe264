package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.scoring.Scoring;
import fingering.scoring.TimedTransitionRule;
import fingering.scoring.Transition;
import fingering.scoring.TransitionCosts;
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
        scoring.timed().stream()
            .map(rule -> new CostMatrix(left.size(), reached.size()))
            .collect(ImmutableList.toImmutableList());
    Transition untimed = transition.atLeisure();
    TransitionCosts costs = scoring.untimed(untimed);
    for (int i = 0; i < left.size(); i++) {
      Grip from = left.get(i);
      open[i] = from.open();
      for (int j = 0; j < reached.size(); j++) {
        Grip to = reached.get(j);
        boolean shifts = costs.shifts(from, to);
        points.put(i, j, costs.of(from, to, shifts));
        slowness.put(i, j, scoring.paced(untimed, from, to));
        for (int r = 0; shifts && r < needed.size(); r++) {
          needed.get(r).put(i, j, scoring.timed().get(r).needed(untimed, from, to));
        }
      }
    }
    paced = Optional.of(slowness).filter(table -> !table.empty());
  }

  /** The same with the time that a passing leaves. */
  EdgeCosts in(Transition transition) {
    return new EdgeCosts(late(transition) ? timed(transition) : points, paced);
  }

  private boolean late(Transition transition) {
    for (CostMatrix each : needed) {
      for (int i = 0; i < open.length; i++) {
        if (each.most(i) > transition.micros(open[i])) {
          return true;
        }
      }
    }
    return false;
  }

  private CostMatrix timed(Transition transition) {
    CostMatrix sum = points;
    for (int r = 0; r < needed.size(); r++) {
      TimedTransitionRule rule = scoring.timed().get(r);
      CostMatrix timed = new CostMatrix(open.length, points.reached());
      for (int i = 0; i < open.length; i++) {
        long micros = transition.micros(open[i]);
        for (int j = 0; j < points.reached(); j++) {
          long units = rule.units(needed.get(r).get(i, j), micros);
          timed.put(i, j, sum.get(i, j) + units * scoring.timedWeights().get(r));
        }
      }
      sum = timed;
    }
    return sum;
  }
}
