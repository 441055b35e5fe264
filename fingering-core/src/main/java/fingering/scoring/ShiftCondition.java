package fingering.scoring;

import fingering.fingerboard.Grip;

/** The hand movement that a transition rule requires before it charges anything. */
public enum ShiftCondition {
  /** No condition. */
  ANY,
  /** The hand shifts. */
  SHIFT,
  /** The hand does not shift. */
  STAY;

  /**
   * Whether the condition is met.
   *
   * @param shifts whether the hand shifts
   */
  boolean met(boolean shifts) {
    return this == ANY || shifts == (this == SHIFT);
  }

  /** Whether the movement between two grips meets the condition. */
  boolean met(Transition transition, Grip before, Grip now) {
    return this == ANY || met(HandMovement.shifts(transition, before, now));
  }
}
