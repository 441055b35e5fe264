package fingering.scoring;

import fingering.fingerboard.Grip;
import java.util.function.Predicate;

/** The rules that charge something in one transition, with their weights, by shift condition. */
final class ApplyingRules {
  private final Transition transition;
  private final Some always;
  private final Some shifting;
  private final Some staying;

  private static final class Some {
    private final TransitionRule[] rules;
    private final long[] weights;
    private int size;

    Some(int most) {
      rules = new TransitionRule[most];
      weights = new long[most];
    }

    void add(TransitionRule rule, long weight) {
      rules[size] = rule;
      weights[size] = weight;
      size++;
    }

    long cost(Transition transition, Grip before, Grip now) {
      long cost = 0;
      for (int i = 0; i < size; i++) {
        long amount = Scoring.checked(rules[i], rules[i].amount(transition, before, now));
        cost += amount * weights[i];
      }
      return cost;
    }
  }

  /**
   * The rules that apply, out of all that look at some aspects.
   *
   * @param weights their weights, in the same order
   */
  ApplyingRules(
      Transition transition,
      TransitionRule[] rules,
      long[] weights,
      Predicate<GripAspect> aspects) {
    this.transition = transition;
    always = new Some(rules.length);
    shifting = new Some(rules.length);
    staying = new Some(rules.length);
    for (int i = 0; i < rules.length; i++) {
      if (aspects.test(rules[i].aspect()) && rules[i].appliesTo(transition)) {
        of(rules[i].condition()).add(rules[i], weights[i]);
      }
    }
  }

  private Some of(ShiftCondition condition) {
    return switch (condition) {
      case ANY -> always;
      case SHIFT -> shifting;
      case STAY -> staying;
    };
  }

  /** Whether a rule charges something where the hand shifts, or where it stays. */
  boolean any(boolean shifts) {
    return always.size > 0 || (shifts ? shifting : staying).size > 0;
  }

  /** Whether it matters to a rule if the hand shifts. */
  boolean conditional() {
    return shifting.size > 0 || staying.size > 0;
  }

  /**
   * Points for two successive grips.
   *
   * @param shifts whether the hand shifts
   */
  long cost(Grip before, Grip now, boolean shifts) {
    return always.cost(transition, before, now)
        + (shifts ? shifting : staying).cost(transition, before, now);
  }
}
