package fingering.scoring;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableLongArray;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

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
  private final TransitionRule[] untimedRules;
  private final long[] untimedWeights;
  private final ImmutableList<TimedTransitionRule> timedRules;
  private final ImmutableLongArray timedWeights;
  private final PacedNoteRule[] pacedNoteRules;
  private final long[] pacedNoteWeights;
  private final PacedTransitionRule[] pacedTransitionRules;
  private final long[] pacedTransitionWeights;

  private Scoring(ImmutableList<CostRule> rules, Weights weights) {
    this.rules = rules;
    List<CostRule> charging =
        rules.stream().filter(rule -> weights.of(rule) > 0 && !rule.idle()).toList();
    noteRules = of(charging, NoteRule.class).toArray(NoteRule[]::new);
    noteWeights = weights(noteRules, weights);
    transitionRules = of(charging, TransitionRule.class).toArray(TransitionRule[]::new);
    transitionWeights = weights(transitionRules, weights);
    untimedRules =
        of(charging, TransitionRule.class)
            .filter(rule -> !(rule instanceof TimedTransitionRule))
            .filter(rule -> !(rule instanceof PacedTransitionRule))
            .toArray(TransitionRule[]::new);
    untimedWeights = weights(untimedRules, weights);
    timedRules = of(charging, TimedTransitionRule.class).collect(ImmutableList.toImmutableList());
    timedWeights = ImmutableLongArray.copyOf(weights(timedRules.toArray(CostRule[]::new), weights));
    pacedNoteRules = of(charging, PacedNoteRule.class).toArray(PacedNoteRule[]::new);
    pacedNoteWeights = weights(pacedNoteRules, weights);
    pacedTransitionRules =
        of(charging, PacedTransitionRule.class).toArray(PacedTransitionRule[]::new);
    pacedTransitionWeights = weights(pacedTransitionRules, weights);
  }

  private static <R extends CostRule> Stream<R> of(List<CostRule> rules, Class<R> kind) {
    return rules.stream().filter(kind::isInstance).map(kind::cast);
  }

  private static long[] weights(CostRule[] rules, Weights weights) {
    return Arrays.stream(rules).mapToLong(weights::of).toArray();
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

  /** The rules, in the order in which they are told. */
  public ImmutableList<CostRule> rules() {
    return rules;
  }

  /** The furthest that any rule looks back, in moments. */
  public int lookBack() {
    return rules.stream().mapToInt(CostRule::lookBack).max().orElse(0);
  }

  /** Points of a grip by itself. */
  public long cost(NoteContext context, Grip grip) {
    long cost = 0;
    for (int i = 0; i < noteRules.length; i++) {
      cost += charged(noteRules[i], noteRules[i].amount(context, grip)) * noteWeights[i];
    }
    return cost;
  }

  /**
   * Points of a grip by itself for each hundredth of a second of {@link NoteContext#slowness}: its
   * cost is that of the {@link NoteContext#unsung unsung} stroke and so much more.
   */
  public long paced(NoteContext context, Grip grip) {
    long cost = 0;
    for (int i = 0; i < pacedNoteRules.length; i++) {
      cost +=
          charged(pacedNoteRules[i], pacedNoteRules[i].share(context, grip)) * pacedNoteWeights[i];
    }
    return cost;
  }

  /** Points of the way from one grip to the next. */
  public long cost(Transition transition, Grip before, Grip now) {
    return cost(transitionRules, transitionWeights, transition, before, now);
  }

  /** What ways cost in a passing but for what depends on times and pace. */
  public TransitionCosts untimed(Transition transition) {
    return new TransitionCosts(untimedRules, untimedWeights, transition);
  }

  static long cost(
      TransitionRule[] rules, long[] weights, Transition transition, Grip before, Grip now) {
    long cost = 0;
    for (int i = 0; i < rules.length; i++) {
      cost += charged(rules[i], rules[i].amount(transition, before, now)) * weights[i];
    }
    return cost;
  }

  /** The rules that charge what time is lacking. */
  public ImmutableList<TimedTransitionRule> timed() {
    return timedRules;
  }

  /** Their weights, in points for a unit of each. */
  public ImmutableLongArray timedWeights() {
    return timedWeights;
  }

  /** Points of the way for each hundredth of a second of {@link Transition#slowness}. */
  public long paced(Transition transition, Grip before, Grip now) {
    long cost = 0;
    for (int i = 0; i < pacedTransitionRules.length; i++) {
      PacedTransitionRule rule = pacedTransitionRules[i];
      cost += charged(rule, rule.share(transition, before, now)) * pacedTransitionWeights[i];
    }
    return cost;
  }

  /** The amount, where it is one: the search relies on costs of 0 or more. */
  private static long charged(CostRule rule, long amount) {
    if (amount < 0) {
      throw new IllegalStateException("the rule '" + rule.id() + "' charged " + amount);
    }
    return amount;
  }

  /** What every rule charges a whole path, moment by moment; charges of nothing are left out. */
  public ImmutableList<Charge> explain(ImmutableList<Moment> moments, ImmutableList<Grip> path) {
    ImmutableList.Builder<Charge> charges = ImmutableList.builder();
    for (int m = 0; m < path.size(); m++) {
      NoteContext context = NoteContext.of(moments.get(m));
      for (int i = 0; i < noteRules.length; i++) {
        long amount = noteRules[i].amount(context, path.get(m));
        add(charges, noteRules[i], m, amount, noteWeights[i]);
      }
      if (m == 0) {
        continue;
      }
      Transition transition = Transition.between(moments.get(m - 1), moments.get(m));
      for (int i = 0; i < transitionRules.length; i++) {
        long amount = transitionRules[i].amount(transition, path.get(m - 1), path.get(m));
        add(charges, transitionRules[i], m, amount, transitionWeights[i]);
      }
    }
    return charges.build();
  }

  private static void add(
      ImmutableList.Builder<Charge> charges, CostRule rule, int moment, long amount, long weight) {
    charged(rule, amount);
    if (amount * weight > 0) {
      charges.add(new Charge(rule.id(), moment, amount, weight));
    }
  }
}
