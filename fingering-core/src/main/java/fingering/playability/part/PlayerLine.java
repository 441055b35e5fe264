package fingering.playability.part;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.plan.Plan;
import fingering.tempo.MeasureLimits;
import java.util.function.BiPredicate;

/**
 * The notes of one player of a part, without notes out of range, with the easiest fingering for the
 * level. Indices of moments count the moments of this line, not of the part.
 *
 * @param grips every grip of every moment
 * @param plan the easiest plan
 * @param limits the limits of its tempo, by measure
 */
public record PlayerLine(
    ImmutableList<ImmutableList<Grip>> grips, Plan plan, MeasureLimits limits) {
  Passage passage() {
    return plan.passage();
  }

  /** Returns the moments of the line. */
  public ImmutableList<Moment> moments() {
    return plan.passage().moments();
  }

  /** Returns the moment of an index. */
  public Moment moment(int m) {
    return moments().get(m);
  }

  /** Returns the grip of the easiest plan at a moment. */
  public Grip grip(int m) {
    return plan.grips().get(m);
  }

  /**
   * Returns whether a moment and the one before it can be played in one position, no higher than in
   * the plan. The plan may still prefer a shift.
   *
   * @param fits whether two grips in one position are acceptable
   */
  public boolean inOnePosition(int m, BiPredicate<Grip, Grip> fits) {
    int highest =
        Math.max(grip(m - 1).frame().position().rank(), grip(m).frame().position().rank());
    for (Grip left : grips.get(m - 1)) {
      if (left.frame().position().rank() > highest) {
        continue;
      }
      for (Grip reached : grips.get(m)) {
        if (left.frame().index() == reached.frame().index() && fits.test(left, reached)) {
          return true;
        }
      }
    }
    return false;
  }
}
