package fingering.audition;

import fingering.plan.Plan;

/**
 * A piece of an audition with its plan.
 *
 * @param piece the piece
 * @param plan the cheapest plan that shows the share of this piece in the required skills
 */
public record PlannedPiece(AuditionPiece piece, Plan plan) {
  /** The points of the plan above the cheapest plan of the piece, 0 or more. */
  public long extraCost() {
    return plan.total() - piece.cheapest().total();
  }
}
