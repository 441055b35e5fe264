package fingering.plan;

import fingering.scoring.Charge;

/**
 * What one rule charges a whole plan.
 *
 * @param rule id of the rule
 * @param name its name in print
 * @param explanation its sentence
 * @param unit its unit
 * @param weight points a unit
 * @param amount units charged
 * @param notes how many moments it charged
 */
public record RuleCost(
    String rule,
    String name,
    String explanation,
    String unit,
    long weight,
    long amount,
    int notes) {
  /** Points charged. */
  public long cost() {
    return amount * weight;
  }

  /** The same with one charge more. */
  RuleCost and(Charge charge) {
    return new RuleCost(
        rule, name, explanation, unit, charge.weight(), amount + charge.amount(), notes + 1);
  }
}
