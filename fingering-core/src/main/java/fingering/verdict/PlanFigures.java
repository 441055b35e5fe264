package fingering.verdict;

import fingering.fingerboard.Finger;
import fingering.plan.Plan;
import fingering.plan.PlannedNote;
import java.util.List;
import java.util.function.Predicate;

/**
 * What a plan asks of the hand and the bow, as counts. Differences of two plans may be negative.
 *
 * @param shifts shifts of the hand
 * @param crossings string crossings
 * @param fourthFingers notes with the fourth finger
 */
public record PlanFigures(int shifts, int crossings, int fourthFingers) {

  /** The figures of a whole plan. */
  public static PlanFigures of(Plan plan) {
    return of(plan, note -> true);
  }

  /** The figures of some notes of a plan. */
  public static PlanFigures of(Plan plan, Predicate<PlannedNote> wanted) {
    List<PlannedNote> notes = plan.notes().stream().filter(wanted).toList();
    return new PlanFigures(
        count(notes, PlannedNote::shift),
        count(notes, note -> note.crossing() > 0),
        count(notes, note -> note.placement().finger() == Finger.FOURTH));
  }

  private static int count(List<PlannedNote> notes, Predicate<PlannedNote> counted) {
    return (int) notes.stream().filter(counted).count();
  }

  /** These figures less those of another plan: above 0 where this plan asks more. */
  public PlanFigures minus(PlanFigures other) {
    return new PlanFigures(
        shifts - other.shifts, crossings - other.crossings, fourthFingers - other.fourthFingers);
  }

  /** Whether every figure is at least 0. */
  public boolean nowhereBelowZero() {
    return shifts >= 0 && crossings >= 0 && fourthFingers >= 0;
  }
}
