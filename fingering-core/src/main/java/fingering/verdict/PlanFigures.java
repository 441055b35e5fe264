package fingering.verdict;

import fingering.plan.Plan;
import fingering.plan.PlanFigure;

/**
 * What makes a plan hard for hand and bow, as counts. Differences of two plans may be negative.
 *
 * @param shifts shifts of the hand
 * @param crossings string crossings
 * @param fourthFingers notes with the fourth finger
 */
public record PlanFigures(int shifts, int crossings, int fourthFingers) {

  /** The figures of a plan. */
  public static PlanFigures of(Plan plan) {
    return new PlanFigures(plan.shifts(), plan.crossings(), plan.fourthFingers());
  }

  /** One of the figures. */
  public int count(PlanFigure figure) {
    return switch (figure) {
      case SHIFTS -> shifts;
      case CROSSINGS -> crossings;
      case FOURTH_FINGERS -> fourthFingers;
    };
  }

  /** These figures less those of another plan: above 0 where this plan has more. */
  public PlanFigures minus(PlanFigures other) {
    return new PlanFigures(
        shifts - other.shifts, crossings - other.crossings, fourthFingers - other.fourthFingers);
  }

  /** Whether every figure is at least 0. */
  public boolean nowhereBelowZero() {
    return shifts >= 0 && crossings >= 0 && fourthFingers >= 0;
  }
}
