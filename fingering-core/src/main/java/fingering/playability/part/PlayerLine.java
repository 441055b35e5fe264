package fingering.playability.part;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.plan.Plan;
import fingering.tempo.MeasureLimits;
import java.util.function.BiPredicate;

/**
 * What one player plays of a part, without what no player can play, and the fingering that is
 * easiest for the level.
 *
 * @param ways every grip of every moment
 * @param plan the plan
 * @param limits what keeps its measures from going faster
 */
public record PlayerLine(ImmutableList<ImmutableList<Grip>> ways, Plan plan, MeasureLimits limits) {
  Passage passage() {
    return plan.passage();
  }

  public ImmutableList<Moment> moments() {
    return plan.passage().moments();
  }

  public Moment moment(int m) {
    return moments().get(m);
  }

  public Grip grip(int m) {
    return plan.grips().get(m);
  }

  /**
   * Whether a moment and the one before it can be taken in one position, so that the grips fit, and
   * no higher than the plan goes there. The plan may have found something else easier.
   */
  public boolean inOnePosition(int m, BiPredicate<Grip, Grip> fits) {
    int highest =
        Math.max(grip(m - 1).frame().position().rank(), grip(m).frame().position().rank());
    for (Grip left : ways.get(m - 1)) {
      if (left.frame().position().rank() > highest) {
        continue;
      }
      for (Grip reached : ways.get(m)) {
        if (left.frame().index() == reached.frame().index() && fits.test(left, reached)) {
          return true;
        }
      }
    }
    return false;
  }
}
