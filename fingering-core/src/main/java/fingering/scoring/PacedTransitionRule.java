package fingering.scoring;

import fingering.fingerboard.Grip;

/**
 * A transition rule that charges the more the more slowly the music goes: a share for each
 * hundredth of a second that {@link Transition#singing} tells. The share itself does not depend on
 * that.
 */
public interface PacedTransitionRule extends TransitionRule {
  /** How much is charged for each hundredth of a second; 0 or more. */
  long share(Transition passing, Grip before, Grip now);

  @Override
  default long amount(Transition passing, Grip before, Grip now) {
    return passing.singing() == 0 ? 0 : passing.singing() * share(passing, before, now);
  }
}
