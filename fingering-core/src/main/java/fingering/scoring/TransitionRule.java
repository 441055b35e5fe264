package fingering.scoring;

import fingering.fingerboard.Grip;

/**
 * A rule that judges two successive grips. If the charge depends on how much time there is, use
 * {@link TimedTransitionRule}.
 */
public non-sealed interface TransitionRule extends CostRule {
  @Override
  default int lookBack() {
    return 1;
  }

  /**
   * The amount charged, in the rule's unit, 0 or more. Called only where the {@link #condition} is
   * met and the rule {@link #appliesTo} the transition; elsewhere nothing is charged.
   */
  long amount(Transition transition, Grip before, Grip now);

  /** Whether the hand has to shift, or not to shift, for the rule to charge anything. */
  default ShiftCondition condition() {
    return ShiftCondition.ANY;
  }

  /** What the rule looks at in the grips. */
  default GripAspect aspect() {
    return GripAspect.WHOLE;
  }

  /** Whether the rule charges anything in this transition, for some pair of grips. */
  default boolean appliesTo(Transition transition) {
    return true;
  }
}
