package fingering.scoring.rules;

import fingering.fingerboard.Grip;
import fingering.scoring.GripAspect;
import fingering.scoring.ShiftCondition;
import fingering.scoring.TimedTransitionRule;
import fingering.scoring.Transition;
import fingering.scoring.TransitionRule;
import java.util.function.Predicate;

/**
 * A transition rule built from its description and a function that measures its amount.
 *
 * @param aspect what the measure looks at in the grips
 * @param condition the hand movement without which nothing is charged
 * @param applies the transitions outside which nothing is charged
 */
record NamedTransitionRule(
    String id,
    String name,
    String explanation,
    String unit,
    Measure measure,
    GripAspect aspect,
    ShiftCondition condition,
    Predicate<Transition> applies)
    implements TransitionRule {

  NamedTransitionRule(String id, String name, String explanation, String unit, Measure measure) {
    this(
        id,
        name,
        explanation,
        unit,
        measure,
        GripAspect.WHOLE,
        ShiftCondition.ANY,
        transition -> true);
  }

  /** Measures the amount for two successive grips. */
  interface Measure {
    /** Always 0. */
    Measure NEVER = (transition, before, now) -> 0;

    long amount(Transition transition, Grip before, Grip now);
  }

  /** A rule that charges for time that is missing for a shift, by the places of the hand alone. */
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

    @Override
    public GripAspect aspect() {
      return GripAspect.HAND;
    }
  }

  /** This rule, which looks only at one aspect of the grips. */
  NamedTransitionRule seeing(GripAspect only) {
    return new NamedTransitionRule(id, name, explanation, unit, measure, only, condition, applies);
  }

  /** This rule, limited to transitions with or without a shift. */
  NamedTransitionRule on(ShiftCondition only) {
    return new NamedTransitionRule(id, name, explanation, unit, measure, aspect, only, applies);
  }

  /** This rule, limited to some transitions. */
  NamedTransitionRule where(Predicate<Transition> only) {
    return new NamedTransitionRule(id, name, explanation, unit, measure, aspect, condition, only);
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
