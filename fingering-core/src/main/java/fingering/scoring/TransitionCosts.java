package fingering.scoring;

import fingering.fingerboard.Grip;
import java.util.Arrays;

/**
 * What a scoring charges for the ways of one passing, without what {@link TimedTransitionRule
 * hurried} and {@link PacedTransitionRule paced} rules do: by the rules that concern it alone.
 */
public final class TransitionCosts {
  private final Transition transition;
  private final Weighted anyway;
  private final Weighted shifting;
  private final Weighted staying;

  /** Rules with their weights. */
  private static final class Weighted {
    private final TransitionRule[] rules;
    private final long[] weights;

    Weighted(TransitionRule[] all, long[] weights, Transition transition, ShiftCondition occasion) {
      int[] kept = new int[all.length];
      int many = 0;
      for (int i = 0; i < all.length; i++) {
        if (all[i].occasion() == occasion && all[i].concerns(transition)) {
          kept[many++] = i;
        }
      }
      rules = Arrays.stream(kept, 0, many).mapToObj(i -> all[i]).toArray(TransitionRule[]::new);
      this.weights = Arrays.stream(kept, 0, many).mapToLong(i -> weights[i]).toArray();
    }

    long cost(Transition transition, Grip before, Grip now) {
      return Scoring.cost(rules, weights, transition, before, now);
    }
  }

  TransitionCosts(TransitionRule[] rules, long[] weights, Transition transition) {
    this.transition = transition;
    anyway = new Weighted(rules, weights, transition, ShiftCondition.ANY);
    shifting = new Weighted(rules, weights, transition, ShiftCondition.SHIFT);
    staying = new Weighted(rules, weights, transition, ShiftCondition.STAY);
  }

  /** Whether the hand shifts on the way from one grip to the next. */
  public boolean shifts(Grip before, Grip now) {
    return HandMovement.shifts(transition, before, now);
  }

  /**
   * Points of the way from one grip to the next.
   *
   * @param shifts whether the hand {@link #shifts} on it
   */
  public long of(Grip before, Grip now, boolean shifts) {
    return anyway.cost(transition, before, now)
        + (shifts ? shifting : staying).cost(transition, before, now);
  }
}
