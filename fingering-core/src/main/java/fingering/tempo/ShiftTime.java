package fingering.tempo;

import fingering.fingerboard.Geometry;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.scoring.HandMovement;
import fingering.scoring.Transition;
import java.util.Optional;

/** The minimum time for a shift of the hand, or for a slide of a finger along its string. */
final class ShiftTime {
  /** The string length in millimetres to which distances are scaled, as in the scoring rules. */
  static final double REFERENCE = 328;

  private final TimeTable times;

  ShiftTime(TimeTable times) {
    this.times = times;
  }

  /**
   * The minimum time from one stopped grip to the next stopped grip.
   *
   * @param adjacent whether no open string is between the two moments
   * @return empty if neither the hand nor a finger moves along a string
   */
  Optional<MinimumTime> between(Moment from, Grip before, Moment to, Grip after, boolean adjacent) {
    boolean shifts =
        adjacent
            ? HandMovement.shifts(Transition.between(from, to), before, after)
            : before.frame().shiftsTo(after.frame());
    double handDistance = shifts ? distance(before.frame().first(), after.frame().first()) : 0;
    Optional<Double> slide = adjacent ? longestSlide(before, after) : Optional.empty();
    double distance = Math.max(handDistance, slide.orElse(0.0));
    if (distance == 0) {
      return Optional.empty();
    }
    long micros = times.shift(distance, !shifts || slide.isPresent());
    return Optional.of(new MinimumTime(shifts ? LimitCause.SHIFT : LimitCause.SLIDE, micros));
  }

  /** The longest distance that a finger slides along its string; empty if no finger stays on it. */
  private static Optional<Double> longestSlide(Grip before, Grip after) {
    Optional<Double> longest = Optional.empty();
    for (Placement earlier : before.placements()) {
      for (Placement later : after.placements()) {
        if (!earlier.open()
            && earlier.string() == later.string()
            && earlier.finger() == later.finger()) {
          double slide = distance(earlier.semitones(), later.semitones());
          longest = Optional.of(Math.max(slide, longest.orElse(0.0)));
        }
      }
    }
    return longest;
  }

  /** The distance in millimetres on the reference string between two heights in semitones. */
  private static double distance(double from, double to) {
    return Math.abs(Geometry.fromNut(REFERENCE, to) - Geometry.fromNut(REFERENCE, from));
  }
}
