package fingering.scoring.rules;

import fingering.fingerboard.Grip;
import fingering.scoring.ShiftCondition;
import fingering.scoring.TimedTransitionRule;
import fingering.scoring.Transition;
import fingering.scoring.TransitionRule;
import java.util.function.Predicate;

/**
 * A transition rule built from its description and a function that measures its amount.
 *
 * @param condition the hand movement without which nothing is charged
 * @param applies the transitions outside which nothing is charged
 */
record NamedTransitionRule(
    String id,
    String name,
    String explanation,
    String unit,
    Measure measure,
    ShiftCondition condition,
    Predicate<Transition> applies)
    implements TransitionRule {

  NamedTransitionRule(String id, String name, String explanation, String unit, Measure measure) {
    this(id, name, explanation, unit, measure, ShiftCondition.ANY, transition -> true);
  }

  /** Measures the amount for two successive grips. */
  interface Measure {
    /** Always 0. */
    Measure NEVER = (transition, before, now) -> 0;

    long amount(Transition transition, Grip before, Grip now);
  }

  /** A rule that charges for time that is missing for a shift. */
  record Timed(
      String id, String name, String explanation, String unit, long unitMicros, Measure needed)
      implements TimedTransitionRule {
    @Override
    public long needed(Transition transition, Grip before, Grip now) {
      return needed.amount(transition, before, now);
    }

    @Override
    public ShiftCondition condition() {
      return ShiftCondition.SHIFT;
    }
  }

  /** This rule, limited to transitions with or without a shift. */
  NamedTransitionRule on(ShiftCondition only) {
    return new NamedTransitionRule(id, name, explanation, unit, measure, only, applies);
  }

  /** This rule, limited to some transitions. */
  NamedTransitionRule where(Predicate<Transition> only) {
    return new NamedTransitionRule(id, name, explanation, unit, measure, condition, only);
  }

  @Override
  public boolean idle() {
    return measure == Measure.NEVER;
  }

  @Override
  public boolean appliesTo(Transition transition) {
    return applies.test(transition);
  }

  @Override
  public long amount(Transition transition, Grip before, Grip now) {
    return measure.amount(transition, before, now);
  }
}
