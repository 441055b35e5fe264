package fingering.scoring;

import fingering.fingerboard.Grip;

/**
 * A transition rule that charges the more the more slowly the music goes: a share for each
 * hundredth of a second that {@link Transition#slowness} tells. The share itself does not depend on
 * that.
 */
public interface PacedTransitionRule extends TransitionRule {
  /** How much is charged for each hundredth of a second; 0 or more. */
  long share(Transition transition, Grip before, Grip now);

  @Override
  default long amount(Transition transition, Grip before, Grip now) {
    return transition.slowness() == 0 ? 0 : transition.slowness() * share(transition, before, now);
  }
}
