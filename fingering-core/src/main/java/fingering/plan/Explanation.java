package fingering.plan;

import com.google.common.base.Suppliers;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.Multimaps;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.scoring.Charge;
import fingering.scoring.CostRule;
import fingering.scoring.Scoring;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * The cost of a plan, broken down by rule and moment. It is computed on first access, because
 * planning alone does not need it. Thread-safe.
 */
public final class Explanation {
  private final Supplier<ImmutableList<Charge>> charges;
  private final Supplier<ImmutableListMultimap<Integer, Charge>> byMoment;
  private final Supplier<ImmutableList<RuleCost>> rules;

  private Explanation(Supplier<ImmutableList<Charge>> charges, Scoring scoring) {
    this.charges = Suppliers.memoize(charges::get);
    this.byMoment = Suppliers.memoize(() -> Multimaps.index(charges(), Charge::moment));
    this.rules = Suppliers.memoize(() -> byRule(scoring, charges()));
  }

  /**
   * The explanation of a path under a scoring. If its charges do not add up to the total, its
   * methods throw {@link IllegalStateException}.
   *
   * @param grips all grips of each moment
   * @param path one of them for each moment
   * @param total the cost of the path in points
   */
  public static Explanation of(
      Scoring scoring,
      ImmutableList<Moment> moments,
      ImmutableList<ImmutableList<Grip>> grips,
      ImmutableList<Grip> path,
      long total) {
    return new Explanation(() -> checkedCharges(scoring, moments, grips, path, total), scoring);
  }

  private static ImmutableList<Charge> checkedCharges(
      Scoring scoring,
      ImmutableList<Moment> moments,
      ImmutableList<ImmutableList<Grip>> grips,
      ImmutableList<Grip> path,
      long total) {
    ImmutableList<Charge> charges = scoring.explain(moments, grips, path);
    long sum = charges.stream().mapToLong(Charge::cost).sum();
    if (sum != total) {
      throw new IllegalStateException("the plan costs " + total + ", but its charges " + sum);
    }
    return charges;
  }

  /** What each rule charged each moment. */
  public ImmutableList<Charge> charges() {
    return charges.get();
  }

  /** The charges at a moment, in the order of {@link #charges}. */
  public ImmutableList<Charge> at(int moment) {
    return byMoment.get().get(moment);
  }

  /** The charges added up by rule, most expensive first, without rules that charged nothing. */
  public ImmutableList<RuleCost> rules() {
    return rules.get();
  }

  private static ImmutableList<RuleCost> byRule(Scoring scoring, ImmutableList<Charge> charges) {
    Map<String, RuleCost> costs = new HashMap<>();
    for (CostRule rule : scoring.rules()) {
      costs.put(
          rule.id(),
          new RuleCost(rule.id(), rule.name(), rule.explanation(), rule.unit(), 0, 0, 0));
    }
    for (Charge charge : charges) {
      costs.computeIfPresent(charge.rule(), (id, cost) -> cost.plus(charge));
    }
    return scoring.rules().stream()
        .map(rule -> costs.get(rule.id()))
        .filter(cost -> cost.moments() > 0)
        .sorted(Comparator.comparingLong(RuleCost::cost).reversed())
        .collect(ImmutableList.toImmutableList());
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Explanation that && charges().equals(that.charges());
  }

  @Override
  public int hashCode() {
    return charges().hashCode();
  }

  @Override
  public String toString() {
    return rules().toString();
  }
}
