package fingering.tempo;

import fingering.fingerboard.Geometry;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.scoring.HandMovement;
import fingering.scoring.Transition;
import java.util.Optional;

/** The least time that the hand, or a finger that stays on its string, takes for its way. */
final class ShiftTime {
  /** Ways are measured on a string of this length, in millimetres, as the rules do. */
  static final double REFERENCE = 328;

  private final TimeTable times;

  ShiftTime(TimeTable times) {
    this.times = times;
  }

  /**
   * What it takes to come from one stopped grip to the next that is stopped.
   *
   * @param next whether the two follow one another, with no open string between
   * @return empty where neither hand nor finger travels
   */
  Optional<MinimumTime> need(Moment from, Grip before, Moment to, Grip reached, boolean next) {
    boolean shifts =
        next
            ? HandMovement.shifts(Transition.between(from, to), before, reached)
            : before.frame().shiftsTo(reached.frame());
    double hand = shifts ? way(before.frame().first(), reached.frame().first()) : 0;
    Optional<Double> finger = next ? sliding(before, reached) : Optional.empty();
    double way = Math.max(hand, finger.orElse(0.0));
    if (way == 0) {
      return Optional.empty();
    }
    long micros = times.shift(way, !shifts || finger.isPresent());
    return Optional.of(new MinimumTime(shifts ? LimitCause.SHIFT : LimitCause.SLIDE, micros));
  }

  /** How far the furthest finger slides that stays on its string; empty where none does. */
  private static Optional<Double> sliding(Grip before, Grip reached) {
    Optional<Double> furthest = Optional.empty();
    for (Placement left : before.placements()) {
      for (Placement placement : reached.placements()) {
        if (!left.open()
            && left.string() == placement.string()
            && left.finger() == placement.finger()) {
          double slides = way(left.semitones(), placement.semitones());
          furthest = Optional.of(Math.max(slides, furthest.orElse(0.0)));
        }
      }
    }
    return furthest;
  }

  private static double way(double from, double to) {
    return Math.abs(Geometry.fromNut(REFERENCE, to) - Geometry.fromNut(REFERENCE, from));
  }
}
