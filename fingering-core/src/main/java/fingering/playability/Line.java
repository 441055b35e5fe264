package fingering.playability;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.plan.Plan;
import fingering.tempo.MeasureLimits;

/**
 * What one player plays of a part, without what no player can play, and the fingering that is
 * easiest for the level.
 *
 * @param ways every grip of every moment
 * @param plan the plan
 * @param limits what keeps its measures from going faster
 */
record Line(ImmutableList<ImmutableList<Grip>> ways, Plan plan, MeasureLimits limits) {
  Passage passage() {
    return plan.passage();
  }

  ImmutableList<Moment> moments() {
    return plan.passage().moments();
  }

  Moment moment(int m) {
    return moments().get(m);
  }

  Grip grip(int m) {
    return plan.grips().get(m);
  }
}
