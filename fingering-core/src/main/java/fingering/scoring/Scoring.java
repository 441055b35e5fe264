package fingering.scoring;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.Maps;
import com.google.common.primitives.ImmutableLongArray;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.tables.Instrument.HandKind;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The rules with their weights: one cost function for the search and for the explanation. Safe for
 * use by many threads if its rules are.
 */
public final class Scoring {
  /** The highest weight of a rule, in points per unit. */
  public static final int MAX_WEIGHT = 999_999;

  /** The highest amount that a rule may charge at once. With it no cost overflows. */
  private static final long MAX_AMOUNT = Integer.MAX_VALUE;

  private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

  private static final ImmutableList<Class<? extends CostRule>> KINDS =
      ImmutableList.of(
          NoteRule.class, ComparingRule.class, TransitionRule.class, TimedTransitionRule.class);

  private final ImmutableList<CostRule> rules;

  private final ImmutableMap<HandKind, WeightedRules> byHand;

  private Scoring(ImmutableList<CostRule> rules, Weights weights) {
    this.rules = rules;
    byHand =
        Arrays.stream(HandKind.values())
            .collect(
                Maps.toImmutableEnumMap(
                    hand -> hand, hand -> WeightedRules.of(rules, weights, hand)));
  }

  /**
   * A scoring by these rules and the {@link Habit} of the weights.
   *
   * @throws IllegalArgumentException if two rules have the same id, or an id has another form than
   *     {@link CostRule#id} says; if a rule has no weight; if a rule is of more than one kind; or
   *     if the unit of a {@link TimedTransitionRule} is shorter than a microsecond
   */
  public static Scoring of(ImmutableList<CostRule> someRules, Weights weights) {
    ImmutableList<CostRule> rules =
        weights.habit().idle()
            ? someRules
            : ImmutableList.<CostRule>builder().addAll(someRules).add(weights.habit()).build();
    Set<String> ids = new HashSet<>();
    for (CostRule rule : rules) {
      requireId(rule.id(), ids);
      if (KINDS.stream().filter(kind -> kind.isInstance(rule)).count() > 1) {
        throw new IllegalArgumentException(
            "the rule '" + rule.id() + "' is of several kinds; make it several rules");
      }
      if (rule instanceof TimedTransitionRule timed && timed.unitMicros() < 1) {
        throw new IllegalArgumentException(
            "the unit of the rule '" + rule.id() + "' is shorter than a microsecond");
      }
    }
    return new Scoring(rules, weights);
  }

  /** Refuses an id that is not well formed, or is among those of other rules. */
  private static void requireId(String id, Set<String> others) {
    if (!ID.matcher(id).matches()) {
      throw new IllegalArgumentException(
          "'" + id + "' is not the id of a rule; write lower case words such as 'long-open'");
    }
    if (!others.add(id)) {
      throw new IllegalArgumentException(
          "two rules have the id '" + id + "'; give your rule an id of its own");
    }
  }

  /** The rules, in the order in which explanations list them. */
  public ImmutableList<CostRule> rules() {
    return rules;
  }

  /** The largest number of moments that a rule looks back. */
  public int lookBack() {
    return rules.stream().mapToInt(CostRule::lookBack).max().orElse(0);
  }

  private WeightedRules of(HandKind hand) {
    return Objects.requireNonNull(byHand.get(hand));
  }

  /** Points for each grip of a moment, by all rules. */
  public ImmutableLongArray costs(NoteContext context, ImmutableList<Grip> grips) {
    long[] costs = new long[grips.size()];
    addPlainCosts(context, grips, costs);
    addComparedCosts(context, grips, costs);
    return ImmutableLongArray.copyOf(costs);
  }

  /** Points for two successive grips, by all rules. */
  public long cost(TimedTransition transition, Grip before, Grip now) {
    return weighted(now).cost(transition, before, now);
  }

  /** Adds the points for each grip by the rules that judge it alone; they do not see the line. */
  public void addPlainCosts(NoteContext context, ImmutableList<Grip> grips, long[] costs) {
    weighted(grips.get(0)).addPlainCosts(context, grips, costs);
  }

  /** Adds the points for each grip by the rules that compare the grips of a moment. */
  public void addComparedCosts(NoteContext context, ImmutableList<Grip> grips, long[] costs) {
    weighted(grips.get(0)).addComparedCosts(context, grips, costs);
  }

  /** Whether a rule compares the grips of a moment for that kind of hand. */
  public boolean compares(HandKind hand) {
    return of(hand).compares();
  }

  /** The rules that can charge the hand of a grip. */
  WeightedRules weighted(Grip grip) {
    return of(grip.frame().hand());
  }

  /** The amount; the search relies on costs of 0 or more that do not overflow. */
  static long checked(CostRule rule, long amount) {
    if (amount < 0 || amount > MAX_AMOUNT) {
      throw new IllegalStateException(
          "the rule '" + rule.id() + "' charged " + amount + ", not 0 to " + MAX_AMOUNT);
    }
    return amount;
  }

  /** Microseconds that a movement takes by a rule; 0 where its condition is not met. */
  static long needed(
      TimedTransitionRule rule, Transition transition, Grip before, Grip now, boolean shifts) {
    return rule.condition().met(shifts) ? needed(rule, transition, before, now) : 0;
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

  /**
   * The charges of every rule along a path, moment by moment; charges of 0 are left out.
   *
   * @param grips all grips of each moment
   * @param path one of them for each moment
   */
  public ImmutableList<Charge> explain(
      ImmutableList<Moment> moments,
      ImmutableList<ImmutableList<Grip>> grips,
      ImmutableList<Grip> path) {
    ImmutableList.Builder<Charge> charges = ImmutableList.builder();
    for (int m = 0; m < path.size(); m++) {
      NoteContext context = NoteContext.of(moments.get(m));
      WeightedRules weighted = weighted(path.get(m));
      weighted.explain(context, grips.get(m), path.get(m), m, charges);
      if (m > 0) {
        TimedTransition transition = TimedTransition.between(moments.get(m - 1), moments.get(m));
        weighted.explain(transition, path.get(m - 1), path.get(m), m, charges);
      }
    }
    return charges.build();
  }

  /** The amount that a rule charges for a grip; 0 if the rule judges transitions. */
  public static long amount(
      CostRule rule, NoteContext context, ImmutableList<Grip> grips, Grip grip) {
    if (rule instanceof NoteRule plain) {
      return checked(rule, plain.amount(context, grip));
    }
    if (rule instanceof ComparingRule comparing) {
      return checked(rule, comparing.amounts(context, grips).get(grips.indexOf(grip)));
    }
    return 0;
  }
}
