package fingering.scoring;

import fingering.fingerboard.Grip;

/**
 * A rule that charges for missing time. The rule says how long a movement takes; the scoring
 * compares this with the time that the music gives, see {@link TransitionTime}, and charges one
 * unit for every {@link #unitMicros} that are missing.
 */
public non-sealed interface TimedTransitionRule extends CostRule {
  @Override
  default int lookBack() {
    return 1;
  }

  /** Microseconds per unit of the rule, 1 or more. */
  long unitMicros();

  /**
   * Microseconds that the movement takes, 0 to {@link TransitionTime#MAX_MICROS}; 0 if there is no
   * movement. Called only where the {@link #condition} is met; elsewhere nothing is charged.
   */
  long needed(Transition transition, Grip before, Grip now);

  /** Whether the hand has to shift, or not to shift, for the rule to charge anything. */
  default ShiftCondition condition() {
    return ShiftCondition.ANY;
  }

  /** What the rule looks at in the grips. */
  default GripAspect aspect() {
    return GripAspect.WHOLE;
  }
}
