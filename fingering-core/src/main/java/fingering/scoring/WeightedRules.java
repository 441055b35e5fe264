package fingering.scoring;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.Maps;
import com.google.common.primitives.ImmutableLongArray;
import fingering.fingerboard.Grip;
import fingering.tables.Instrument.HandKind;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** The rules that can charge one kind of hand anything, with their weights, sorted by kind. */
final class WeightedRules {
  private final CostRule[] charging;
  private final long[] chargingWeights;
  private final NoteRule[] noteRules;
  private final long[] noteWeights;
  private final ComparingRule[] comparingRules;
  private final long[] comparingWeights;

  private final ImmutableMap<GripAspect, TransitionRule[]> transitionRules;
  private final ImmutableMap<GripAspect, long[]> transitionWeights;
  private final ImmutableList<TimedTransitionRule> timedRules;
  private final ImmutableLongArray timedWeights;

  private WeightedRules(List<CostRule> some, Weights weights, HandKind hand) {
    charging = some.toArray(CostRule[]::new);
    chargingWeights = weights(charging, weights, hand);
    noteRules = kind(some, NoteRule.class).toArray(NoteRule[]::new);
    noteWeights = weights(noteRules, weights, hand);
    comparingRules = kind(some, ComparingRule.class).toArray(ComparingRule[]::new);
    comparingWeights = weights(comparingRules, weights, hand);
    transitionRules =
        Arrays.stream(GripAspect.values())
            .collect(Maps.toImmutableEnumMap(aspect -> aspect, aspect -> looking(some, aspect)));
    transitionWeights =
        transitionRules.keySet().stream()
            .collect(
                Maps.toImmutableEnumMap(
                    aspect -> aspect, aspect -> weights(looking(some, aspect), weights, hand)));
    timedRules = kind(some, TimedTransitionRule.class).collect(ImmutableList.toImmutableList());
    timedWeights =
        ImmutableLongArray.copyOf(weights(timedRules.toArray(CostRule[]::new), weights, hand));
  }

  static WeightedRules of(ImmutableList<CostRule> rules, Weights weights, HandKind hand) {
    return new WeightedRules(
        rules.stream().filter(rule -> weights.of(rule, hand) > 0 && !rule.idle(hand)).toList(),
        weights,
        hand);
  }

  private static <R extends CostRule> Stream<R> kind(List<CostRule> rules, Class<R> kind) {
    return rules.stream().filter(kind::isInstance).map(kind::cast);
  }

  private static TransitionRule[] looking(List<CostRule> rules, GripAspect aspect) {
    return kind(rules, TransitionRule.class)
        .filter(rule -> rule.aspect() == aspect)
        .toArray(TransitionRule[]::new);
  }

  private static long[] weights(CostRule[] rules, Weights weights, HandKind hand) {
    return Arrays.stream(rules).mapToLong(rule -> weights.of(rule, hand)).toArray();
  }

  long cost(TimedTransition transition, Grip before, Grip now) {
    long cost = 0;
    for (int i = 0; i < charging.length; i++) {
      cost += transition.amount(charging[i], before, now) * chargingWeights[i];
    }
    return cost;
  }

  void addPlainCosts(NoteContext context, ImmutableList<Grip> grips, long[] costs) {
    for (int j = 0; j < costs.length; j++) {
      for (int i = 0; i < noteRules.length; i++) {
        long amount = Scoring.checked(noteRules[i], noteRules[i].amount(context, grips.get(j)));
        costs[j] += amount * noteWeights[i];
      }
    }
  }

  void addComparedCosts(NoteContext context, ImmutableList<Grip> grips, long[] costs) {
    for (int i = 0; i < comparingRules.length; i++) {
      ImmutableLongArray amounts = comparingRules[i].amounts(context, grips);
      for (int j = 0; j < costs.length; j++) {
        costs[j] += Scoring.checked(comparingRules[i], amounts.get(j)) * comparingWeights[i];
      }
    }
  }

  boolean compares() {
    return comparingRules.length > 0;
  }

  /** The rules that look at one aspect of the grips, as far as they apply to a transition. */
  ApplyingRules applying(Transition transition, GripAspect aspect) {
    return new ApplyingRules(
        transition,
        Objects.requireNonNull(transitionRules.get(aspect)),
        Objects.requireNonNull(transitionWeights.get(aspect)));
  }

  /** Nothing known yet about the rules that look only at the hand. */
  SharedCosts.Hand hand(Transition transition) {
    return new SharedCosts.Hand(
        new HandCosts(applying(transition, GripAspect.HAND)::cost),
        timedRules.stream()
            .map(
                rule ->
                    new HandCosts(
                        (before, now, shifts) ->
                            Scoring.needed(rule, transition, before, now, shifts)))
            .collect(ImmutableList.toImmutableList()));
  }

  ImmutableList<TimedTransitionRule> timedRules() {
    return timedRules;
  }

  ImmutableLongArray timedWeights() {
    return timedWeights;
  }

  /** Adds the charges for a grip. */
  void explain(
      NoteContext context,
      ImmutableList<Grip> grips,
      Grip grip,
      int moment,
      ImmutableList.Builder<Charge> charges) {
    for (int i = 0; i < charging.length; i++) {
      add(i, moment, Scoring.amount(charging[i], context, grips, grip), charges);
    }
  }

  /** Adds the charges for two successive grips. */
  void explain(
      TimedTransition transition,
      Grip before,
      Grip now,
      int moment,
      ImmutableList.Builder<Charge> charges) {
    for (int i = 0; i < charging.length; i++) {
      add(i, moment, transition.amount(charging[i], before, now), charges);
    }
  }

  private void add(int rule, int moment, long amount, ImmutableList.Builder<Charge> charges) {
    if (amount > 0) {
      charges.add(new Charge(charging[rule].id(), moment, amount, chargingWeights[rule]));
    }
  }
}
