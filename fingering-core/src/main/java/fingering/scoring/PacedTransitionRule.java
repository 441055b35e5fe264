package fingering.scoring;

import fingering.fingerboard.Grip;

/**
 * A rule that judges two successive grips, and charges more the slower the music is. The rule gives
 * the amount per hundredth of a second; the scoring multiplies it by {@link
 * TimedTransition#slowness}.
 */
public non-sealed interface PacedTransitionRule extends CostRule {
  @Override
  default int lookBack() {
    return 1;
  }

  /** The amount charged for each hundredth of a second of slowness, 0 or more. */
  long share(Transition transition, Grip before, Grip now);
}
