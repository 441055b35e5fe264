package fingering.plan;

import com.google.common.base.Suppliers;
import com.google.common.collect.ImmutableList;
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
 * Why a plan costs what it does. It is worked out when first asked for, since whoever only plans
 * does not ask. Safe for use by many threads.
 */
public final class Explanation {
  private final Supplier<ImmutableList<Charge>> charges;
  private final Supplier<ImmutableList<RuleCost>> rules;

  private Explanation(Supplier<ImmutableList<Charge>> charges, Scoring scoring) {
    this.charges = Suppliers.memoize(charges::get);
    this.rules = Suppliers.memoize(() -> byRule(scoring, charges()));
  }

  /**
   * The explanation of a path by a scoring.
   *
   * @param total the points of the path; an explanation that comes to another sum is never given
   */
  public static Explanation of(
      Scoring scoring, ImmutableList<Moment> moments, ImmutableList<Grip> path, long total) {
    return new Explanation(() -> explained(scoring, moments, path, total), scoring);
  }

  private static ImmutableList<Charge> explained(
      Scoring scoring, ImmutableList<Moment> moments, ImmutableList<Grip> path, long total) {
    ImmutableList<Charge> charges = scoring.explain(moments, path);
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

  /** The charges added up by rule, dearest first; rules that charged nothing are left out. */
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
      costs.computeIfPresent(charge.rule(), (id, cost) -> cost.and(charge));
    }
    return scoring.rules().stream()
        .map(rule -> costs.get(rule.id()))
        .filter(cost -> cost.notes() > 0)
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
