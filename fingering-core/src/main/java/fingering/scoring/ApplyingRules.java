package fingering.scoring;

import fingering.fingerboard.Grip;

/** The rules that charge something in one transition, with their weights, by shift condition. */
final class ApplyingRules {
  private final Transition transition;

  /** The rules that charge something where the hand shifts. */
  private final Some shifting;

  /** The rules that charge something where it stays. */
  private final Some staying;

  private final boolean conditional;

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
   * The rules of an array that apply.
   *
   * @param weights their weights, in the same order
   */
  ApplyingRules(Transition transition, TransitionRule[] rules, long[] weights) {
    this.transition = transition;
    shifting = new Some(rules.length);
    staying = new Some(rules.length);
    boolean any = false;
    for (int i = 0; i < rules.length; i++) {
      if (rules[i].appliesTo(transition)) {
        ShiftCondition condition = rules[i].condition();
        any |= condition != ShiftCondition.ANY;
        if (condition.met(true)) {
          shifting.add(rules[i], weights[i]);
        }
        if (condition.met(false)) {
          staying.add(rules[i], weights[i]);
        }
      }
    }
    conditional = any;
  }

  /** Whether a rule charges something where the hand shifts, or where it stays. */
  boolean any(boolean shifts) {
    return (shifts ? shifting : staying).size > 0;
  }

  /** Whether it matters to a rule if the hand shifts. */
  boolean conditional() {
    return conditional;
  }

  /**
   * Points for two successive grips.
   *
   * @param shifts whether the hand shifts
   */
  long cost(Grip before, Grip now, boolean shifts) {
    return (shifts ? shifting : staying).cost(transition, before, now);
  }
}
