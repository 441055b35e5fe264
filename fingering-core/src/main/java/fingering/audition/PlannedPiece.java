package fingering.audition;

import fingering.plan.Plan;

/**
 * A piece with the plan that it is played by.
 *
 * @param piece the piece
 * @param plan its plan: the cheapest that shows what this piece has to show for the whole
 */
public record PlannedPiece(AuditionPiece piece, Plan plan) {
  /** Points above the piece's own cheapest plan, 0 or more. */
  public long extra() {
    return plan.total() - piece.free().total();
  }
}
