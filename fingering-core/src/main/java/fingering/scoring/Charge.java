package fingering.scoring;

/**
 * One entry of an explanation: what a rule charges at a moment.
 *
 * @param rule id of the rule
 * @param moment index of the moment in the passage, from 0
 * @param amount the amount, in the rule's unit, 1 or more
 * @param weight points per unit
 */
public record Charge(String rule, int moment, long amount, long weight) {
  /** The points charged: amount times weight. */
  public long cost() {
    return amount * weight;
  }
}
