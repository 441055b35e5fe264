package fingering.scoring;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Moment;

/**
 * The rules with their weights: one cost function for search and for explanation. Safe for use by
 * many threads as long as its rules are.
 */
public final class Scoring {
  private final ImmutableList<CostRule> rules;
  private final NoteRule[] noteRules;
  private final long[] noteWeights;
  private final TransitionRule[] transitionRules;
  private final long[] transitionWeights;

  private Scoring(ImmutableList<CostRule> rules, Weights weights) {
    this.rules = rules;
    noteRules = rules.stream().filter(NoteRule.class::isInstance).toArray(NoteRule[]::new);
    transitionRules =
        rules.stream().filter(TransitionRule.class::isInstance).toArray(TransitionRule[]::new);
    noteWeights = java.util.Arrays.stream(noteRules).mapToLong(weights::of).toArray();
    transitionWeights = java.util.Arrays.stream(transitionRules).mapToLong(weights::of).toArray();
  }

  /**
   * A scoring of these rules.
   *
   * @throws IllegalArgumentException if a rule has no weight, or is neither a {@link NoteRule} nor
   *     a {@link TransitionRule}
   */
  public static Scoring of(ImmutableList<CostRule> rules, Weights weights) {
    for (CostRule rule : rules) {
      if (!(rule instanceof NoteRule) && !(rule instanceof TransitionRule)) {
        throw new IllegalArgumentException(
            "the rule '" + rule.id() + "' judges neither a note nor a transition");
      }
    }
    return new Scoring(rules, weights);
  }

  /** All rules of the library with the weights of common practice. */
  public static Scoring commonPractice() {
    return of(Rules.all(), Weights.commonPractice());
  }

  /** The rules, in the order in which they are told. */
  public ImmutableList<CostRule> rules() {
    return rules;
  }

  /** The furthest that any rule looks back, in moments. */
  public int lookBack() {
    return rules.stream().mapToInt(CostRule::lookBack).max().orElse(0);
  }

  /** Points of a grip by itself. */
  public long cost(Moment moment, Grip grip) {
    long cost = 0;
    for (int i = 0; i < noteRules.length; i++) {
      cost += noteRules[i].amount(moment, grip) * noteWeights[i];
    }
    return cost;
  }

  /** Points of the way from one grip to the next. */
  public long cost(Passing passing, Grip before, Grip now) {
    long cost = 0;
    for (int i = 0; i < transitionRules.length; i++) {
      cost += transitionRules[i].amount(passing, before, now) * transitionWeights[i];
    }
    return cost;
  }

  /** Whether the hand shifts on the way from one grip to the next. */
  public static boolean shifts(Passing passing, Grip before, Grip now) {
    return ShiftRules.shifts(passing, before, now);
  }

  /** How many strings the bow crosses on the way: 0 none, 1 to the neighbour, 2 skipping one. */
  public static int stringsCrossed(Passing passing, Grip before, Grip now) {
    return CrossingRules.apart(passing, before, now);
  }

  /** What every rule charges a whole path, moment by moment; charges of nothing are left out. */
  public ImmutableList<Charge> explain(ImmutableList<Moment> moments, ImmutableList<Grip> path) {
    ImmutableList.Builder<Charge> charges = ImmutableList.builder();
    for (int m = 0; m < path.size(); m++) {
      for (int i = 0; i < noteRules.length; i++) {
        long amount = noteRules[i].amount(moments.get(m), path.get(m));
        add(charges, noteRules[i], m, amount, noteWeights[i]);
      }
      if (m == 0) {
        continue;
      }
      Passing passing = Passing.between(moments.get(m - 1), moments.get(m));
      for (int i = 0; i < transitionRules.length; i++) {
        long amount = transitionRules[i].amount(passing, path.get(m - 1), path.get(m));
        add(charges, transitionRules[i], m, amount, transitionWeights[i]);
      }
    }
    return charges.build();
  }

  private static void add(
      ImmutableList.Builder<Charge> charges, CostRule rule, int moment, long amount, long weight) {
    if (amount < 0) {
      throw new IllegalStateException("the rule '" + rule.id() + "' charged " + amount);
    }
    if (amount * weight > 0) {
      charges.add(new Charge(rule.id(), moment, amount, weight));
    }
  }
}
