package fingering.scoring;

import fingering.fingerboard.Grip;

/**
 * A rule that judges the way from one grip to the next. How much time there is a {@link
 * TimedTransitionRule} may charge, and how slow the music is a {@link PacedTransitionRule}; other
 * rules find neither in the passing they are given by the search.
 */
public interface TransitionRule extends CostRule {
  @Override
  default int lookBack() {
    return 1;
  }

  /** How much of what the rule charges this passing has, in the rule's unit; 0 or more. */
  long amount(Transition transition, Grip before, Grip now);

  /** What the hand has to do, or not to do, for the rule to charge anything. */
  default ShiftCondition occasion() {
    return ShiftCondition.ANY;
  }

  /** Whether the rule may charge anything in such a passing, from some grip to some other. */
  default boolean concerns(Transition transition) {
    return true;
  }
}
