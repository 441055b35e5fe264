package fingering.scoring;

import fingering.fingerboard.Grip;
import java.util.Arrays;

/**
 * Costs of pairs of grips in one transition, apart from time. Only the rules that apply to the
 * transition are evaluated.
 */
public final class TransitionCosts {
  private final Transition transition;
  private final WeightedRules always;
  private final WeightedRules shifting;
  private final WeightedRules staying;

  private static final class WeightedRules {
    private final TransitionRule[] rules;
    private final long[] weights;

    WeightedRules(
        TransitionRule[] all, long[] weights, Transition transition, ShiftCondition condition) {
      int[] kept = new int[all.length];
      int size = 0;
      for (int i = 0; i < all.length; i++) {
        if (all[i].condition() == condition && all[i].appliesTo(transition)) {
          kept[size++] = i;
        }
      }
      rules = Arrays.stream(kept, 0, size).mapToObj(i -> all[i]).toArray(TransitionRule[]::new);
      this.weights = Arrays.stream(kept, 0, size).mapToLong(i -> weights[i]).toArray();
    }

    long cost(Transition transition, Grip before, Grip now) {
      long cost = 0;
      for (int i = 0; i < rules.length; i++) {
        long amount = Scoring.checked(rules[i], rules[i].amount(transition, before, now));
        cost += amount * weights[i];
      }
      return cost;
    }
  }

  TransitionCosts(Transition transition, TransitionRule[] rules, long[] weights) {
    this.transition = transition;
    always = new WeightedRules(rules, weights, transition, ShiftCondition.ANY);
    shifting = new WeightedRules(rules, weights, transition, ShiftCondition.SHIFT);
    staying = new WeightedRules(rules, weights, transition, ShiftCondition.STAY);
  }

  /** Whether the hand shifts between two grips. */
  public boolean shifts(Grip before, Grip now) {
    return HandMovement.shifts(transition, before, now);
  }

  /**
   * Points by the rules that do not depend on time.
   *
   * @param shifts whether the hand {@link #shifts}
   */
  public long untimed(Grip before, Grip now, boolean shifts) {
    return always.cost(transition, before, now)
        + (shifts ? shifting : staying).cost(transition, before, now);
  }

  /**
   * Microseconds that a movement takes by a rule; 0 where the rule's condition is not met.
   *
   * @param shifts whether the hand {@link #shifts}
   */
  public long needed(TimedTransitionRule rule, Grip before, Grip now, boolean shifts) {
    return rule.condition().met(shifts) ? Scoring.needed(rule, transition, before, now) : 0;
  }
}
