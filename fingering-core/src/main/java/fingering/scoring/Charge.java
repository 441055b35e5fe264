package fingering.scoring;

/**
 * One entry of an explanation: a rule charged a moment.
 *
 * @param rule id of the rule
 * @param moment index of the moment in the passage, from 0
 * @param amount how much of what the rule charges, in its unit
 * @param weight points a unit
 */
public record Charge(String rule, int moment, long amount, long weight) {
  /** Points charged: amount times weight. */
  public long cost() {
    return amount * weight;
  }
}
