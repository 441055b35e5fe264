package fingering.audition;

import fingering.plan.Brief;
import fingering.plan.InfeasibleBriefException;
import fingering.plan.Plan;
import fingering.plan.Planner;

/**
 * An excerpt or a scale of an audition.
 *
 * @param name its name
 * @param planner the planner of its passage
 * @param cheapest its cheapest plan that meets the demands on this piece
 * @param counts whether the skills that it shows count for the audition
 */
public record AuditionPiece(String name, Planner planner, Plan cheapest, boolean counts) {

  /**
   * A piece with its cheapest plan.
   *
   * @param own the demands on this piece only
   * @throws InfeasibleBriefException if no plan meets them
   */
  public static AuditionPiece of(String name, Planner planner, Brief own, boolean counts) {
    return new AuditionPiece(name, planner, planner.plan(own), counts);
  }
}
