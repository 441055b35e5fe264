package fingering.audition;

import fingering.plan.Brief;
import fingering.plan.InfeasibleBriefException;
import fingering.plan.Plan;
import fingering.plan.Planner;

/**
 * An excerpt or a scale of an audition.
 *
 * @param name what it is called
 * @param planner plans its passage
 * @param free its cheapest plan, that keeps what is demanded of this piece alone
 * @param shows whether what it shows counts for what is asked of the whole
 */
public record AuditionPiece(String name, Planner planner, Plan free, boolean shows) {

  /**
   * A piece with its cheapest plan.
   *
   * @param own what is demanded of this piece alone
   * @throws InfeasibleBriefException if it cannot be planned so
   */
  public static AuditionPiece of(String name, Planner planner, Brief own, boolean shows) {
    return new AuditionPiece(name, planner, planner.plan(own), shows);
  }
}
