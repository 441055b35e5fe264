package fingering.scoring;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableLongArray;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * The rules with their weights: one cost function for the search and for the explanation. Safe for
 * use by many threads if its rules are.
 */
public final class Scoring {
  /** The highest weight of a rule, in points per unit. */
  public static final int MAX_WEIGHT = 999_999;

  /** The highest amount that a rule may charge at once. With it no cost overflows. */
  private static final long MAX_AMOUNT = Integer.MAX_VALUE;

  private static final ImmutableList<Class<? extends CostRule>> KINDS =
      ImmutableList.of(
          NoteRule.class,
          PacedNoteRule.class,
          TransitionRule.class,
          TimedTransitionRule.class,
          PacedTransitionRule.class);

  private final ImmutableList<CostRule> rules;

  /** The rules that can charge anything, of all kinds. */
  private final CostRule[] charging;

  private final long[] chargingWeights;
  private final NoteRule[] noteRules;
  private final long[] noteWeights;
  private final PacedNoteRule[] pacedNoteRules;
  private final long[] pacedNoteWeights;
  private final TransitionRule[] transitionRules;
  private final long[] transitionWeights;
  private final ImmutableList<TimedTransitionRule> timedRules;
  private final ImmutableLongArray timedWeights;
  private final PacedTransitionRule[] pacedTransitionRules;
  private final long[] pacedTransitionWeights;

  private Scoring(ImmutableList<CostRule> rules, Weights weights) {
    this.rules = rules;
    List<CostRule> some =
        rules.stream().filter(rule -> weights.of(rule) > 0 && !rule.idle()).toList();
    charging = some.toArray(CostRule[]::new);
    chargingWeights = weights(charging, weights);
    noteRules = of(some, NoteRule.class).toArray(NoteRule[]::new);
    noteWeights = weights(noteRules, weights);
    pacedNoteRules = of(some, PacedNoteRule.class).toArray(PacedNoteRule[]::new);
    pacedNoteWeights = weights(pacedNoteRules, weights);
    transitionRules = of(some, TransitionRule.class).toArray(TransitionRule[]::new);
    transitionWeights = weights(transitionRules, weights);
    timedRules = of(some, TimedTransitionRule.class).collect(ImmutableList.toImmutableList());
    timedWeights = ImmutableLongArray.copyOf(weights(timedRules.toArray(CostRule[]::new), weights));
    pacedTransitionRules = of(some, PacedTransitionRule.class).toArray(PacedTransitionRule[]::new);
    pacedTransitionWeights = weights(pacedTransitionRules, weights);
  }

  private static <R extends CostRule> Stream<R> of(List<CostRule> rules, Class<R> kind) {
    return rules.stream().filter(kind::isInstance).map(kind::cast);
  }

  private static long[] weights(CostRule[] rules, Weights weights) {
    return Arrays.stream(rules).mapToLong(weights::of).toArray();
  }

  /**
   * A scoring by these rules.
   *
   * @throws IllegalArgumentException if a rule has no weight, or one that is not 0 to {@value
   *     #MAX_WEIGHT}; if a rule is of more than one kind; or if the unit of a {@link
   *     TimedTransitionRule} is shorter than a microsecond
   */
  public static Scoring of(ImmutableList<CostRule> rules, Weights weights) {
    for (CostRule rule : rules) {
      if (KINDS.stream().filter(kind -> kind.isInstance(rule)).count() > 1) {
        throw new IllegalArgumentException(
            "the rule '" + rule.id() + "' is of several kinds; make it several rules");
      }
      long weight = weights.of(rule);
      if (weight < 0 || weight > MAX_WEIGHT) {
        throw new IllegalArgumentException(
            "the weight of the rule '" + rule.id() + "' is " + weight + ", not 0 to " + MAX_WEIGHT);
      }
      if (rule instanceof TimedTransitionRule timed && timed.unitMicros() < 1) {
        throw new IllegalArgumentException(
            "the unit of the rule '" + rule.id() + "' is shorter than a microsecond");
      }
    }
    return new Scoring(rules, weights);
  }

  /** The rules, in the order in which explanations list them. */
  public ImmutableList<CostRule> rules() {
    return rules;
  }

  /** The largest number of moments that a rule looks back. */
  public int lookBack() {
    return rules.stream().mapToInt(CostRule::lookBack).max().orElse(0);
  }

  /** Points for a grip, by all rules. */
  public long cost(PacedNote note, Grip grip) {
    long cost = 0;
    for (int i = 0; i < charging.length; i++) {
      cost += note.amount(charging[i], grip) * chargingWeights[i];
    }
    return cost;
  }

  /** Points for two successive grips, by all rules. */
  public long cost(TimedTransition transition, Grip before, Grip now) {
    long cost = 0;
    for (int i = 0; i < charging.length; i++) {
      cost += transition.amount(charging[i], before, now) * chargingWeights[i];
    }
    return cost;
  }

  /** Points for a grip by the rules that do not depend on the pace. */
  public long unpacedCost(NoteContext context, Grip grip) {
    long cost = 0;
    for (int i = 0; i < noteRules.length; i++) {
      cost += checked(noteRules[i], noteRules[i].amount(context, grip)) * noteWeights[i];
    }
    return cost;
  }

  /** Points for a grip for each hundredth of a second of {@link PacedNote#slowness}. */
  public long pacedCost(NoteContext context, Grip grip) {
    long cost = 0;
    for (int i = 0; i < pacedNoteRules.length; i++) {
      cost +=
          checked(pacedNoteRules[i], pacedNoteRules[i].share(context, grip)) * pacedNoteWeights[i];
    }
    return cost;
  }

  /** The costs of pairs of grips in a transition, apart from time and pace. */
  public TransitionCosts costs(Transition transition) {
    return new TransitionCosts(
        transition,
        transitionRules,
        transitionWeights,
        pacedTransitionRules,
        pacedTransitionWeights);
  }

  /** The rules that charge for missing time. */
  public ImmutableList<TimedTransitionRule> timedRules() {
    return timedRules;
  }

  /** The weights of {@link #timedRules}, in points per unit of each. */
  public ImmutableLongArray timedWeights() {
    return timedWeights;
  }

  /** The amount; the search relies on costs of 0 or more that do not overflow. */
  static long checked(CostRule rule, long amount) {
    if (amount < 0 || amount > MAX_AMOUNT) {
      throw new IllegalStateException(
          "the rule '" + rule.id() + "' charged " + amount + ", not 0 to " + MAX_AMOUNT);
    }
    return amount;
  }

  /** Microseconds that a movement takes by a rule. */
  static long needed(TimedTransitionRule rule, Transition transition, Grip before, Grip now) {
    long needed = rule.needed(transition, before, now);
    if (needed < 0 || needed > TransitionTime.MAX_MICROS) {
      throw new IllegalStateException(
          "the rule '"
              + rule.id()
              + "' needs "
              + needed
              + " microseconds, not 0 to "
              + TransitionTime.MAX_MICROS);
    }
    return needed;
  }

  /** The charges of every rule along a path, moment by moment; charges of 0 are left out. */
  public ImmutableList<Charge> explain(ImmutableList<Moment> moments, ImmutableList<Grip> path) {
    ImmutableList.Builder<Charge> charges = ImmutableList.builder();
    for (int m = 0; m < path.size(); m++) {
      PacedNote note = PacedNote.of(moments.get(m));
      for (int i = 0; i < charging.length; i++) {
        add(charges, i, m, note.amount(charging[i], path.get(m)));
      }
      if (m == 0) {
        continue;
      }
      TimedTransition transition = TimedTransition.between(moments.get(m - 1), moments.get(m));
      for (int i = 0; i < charging.length; i++) {
        add(charges, i, m, transition.amount(charging[i], path.get(m - 1), path.get(m)));
      }
    }
    return charges.build();
  }

  private void add(ImmutableList.Builder<Charge> charges, int rule, int moment, long amount) {
    if (amount > 0) {
      charges.add(new Charge(charging[rule].id(), moment, amount, chargingWeights[rule]));
    }
  }
}
