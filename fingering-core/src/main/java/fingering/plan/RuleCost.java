package fingering.plan;

import fingering.scoring.Charge;

/**
 * The cost of one rule over a whole plan.
 *
 * @param rule id of the rule
 * @param name its name in print
 * @param explanation a sentence that explains the rule
 * @param unit what it counts
 * @param weight points per unit
 * @param amount units charged
 * @param moments the number of moments charged
 */
public record RuleCost(
    String rule,
    String name,
    String explanation,
    String unit,
    long weight,
    long amount,
    int moments) {
  /** Points charged. */
  public long cost() {
    return amount * weight;
  }

  /** The cost with one more charge. */
  RuleCost plus(Charge charge) {
    return new RuleCost(
        rule, name, explanation, unit, charge.weight(), amount + charge.amount(), moments + 1);
  }
}
