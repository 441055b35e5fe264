package fingering.scoring;

import fingering.fingerboard.Grip;

/**
 * A transition rule that charges the time that is lacking: a unit for every so many microseconds by
 * which a shift needs more than the music leaves it. What it needs does not depend on that.
 */
public interface TimedTransitionRule extends TransitionRule {
  /** Microseconds in the rule's unit: more than 0. */
  long unitMicros();

  /** Microseconds that the movement needs; 0 where there is none. Asked where the hand shifts. */
  long needed(Transition transition, Grip before, Grip now);

  @Override
  default long amount(Transition transition, Grip before, Grip now) {
    return units(needed(transition, before, now), transition.micros(before.open()));
  }

  /** The units that are lacking where so many microseconds are needed and so many are there. */
  default long units(long needed, long micros) {
    return needed > micros ? (needed - micros) / unitMicros() : 0;
  }
}
