package fingering.scoring.rules;

import fingering.fingerboard.Grip;
import fingering.scoring.PacedTransitionRule;
import fingering.scoring.ShiftCondition;
import fingering.scoring.TimedTransitionRule;
import fingering.scoring.Transition;
import fingering.scoring.TransitionRule;
import java.util.function.Predicate;

/**
 * A transition rule made of its description and a measure.
 *
 * @param condition the hand movement without which the measure finds nothing
 * @param applies the transitions outside which the measure finds nothing
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

  /** Measures how much of something a passing has. */
  interface Measure {
    /** Finds nothing. */
    Measure NEVER = (transition, before, now) -> 0;

    long amount(Transition transition, Grip before, Grip now);
  }

  /** The same kind of rule, which charges in proportion to the pace. */
  record Paced(String id, String name, String explanation, String unit, Measure measure)
      implements PacedTransitionRule {
    @Override
    public long share(Transition transition, Grip before, Grip now) {
      return measure.amount(transition, before, now);
    }
  }

  /** The same kind of rule, which charges the time that is lacking. */
  record Hurried(
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

  /** The same, where it is known to find nothing on other occasions. */
  NamedTransitionRule on(ShiftCondition only) {
    return new NamedTransitionRule(id, name, explanation, unit, measure, only, applies);
  }

  /** The same, where it is known to find nothing in other passings. */
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
