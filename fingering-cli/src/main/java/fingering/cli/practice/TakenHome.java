package fingering.cli.practice;

import fingering.cli.option.LadderOptions;
import fingering.cli.option.PlanningContext;
import fingering.cli.terminal.Dates;
import fingering.cli.text.HeadingText;
import fingering.cli.text.TempoText;
import fingering.demand.MeasureSpan;
import fingering.lesson.LessonCircles;
import fingering.page.view.HandoutContent;
import fingering.page.view.Ladder;
import fingering.page.view.Paper;
import fingering.plan.Plan;
import fingering.practice.CircleFinder;
import fingering.practice.Journal;
import fingering.practice.PracticePlan;
import fingering.practice.PracticeSpots;
import java.util.Optional;

/** What a student takes home on paper. */
public final class TakenHome {
  private static final int SPOTS = 3;

  private TakenHome() {}

  /**
   * The content for a plan.
   *
   * @param rival the plan that the teacher keeps open
   * @param circles what the teacher circles
   * @param days the ladder to climb; empty if none is planned
   */
  public static HandoutContent of(
      Paper paper,
      Plan plan,
      Optional<Plan> rival,
      PlanningContext planning,
      LessonCircles circles,
      LadderOptions ladder,
      Optional<Ladder> days) {
    return new HandoutContent(
        paper,
        HeadingText.title(plan.passage()),
        planning.students().name(),
        HeadingText.music(plan.passage()),
        ladder.day().map(Dates::full),
        ladder.goal().map(TempoText::mark),
        plan,
        rival,
        planning.printed(),
        circles.of(CircleFinder.of(plan, planning.printed())),
        SpotsText.onHandout(
            PracticeSpots.few(PracticeSpots.of(plan, planning.scoringContext().level()), SPOTS)),
        days,
        PracticeText.CARE);
  }

  /**
   * The ladder to climb; empty if the goal, the day or a clean tempo is missing.
   *
   * @param entries what the journal says
   */
  public static Optional<Ladder> ladder(
      Plan plan, PlanningContext planning, LadderOptions ladder, Journal entries) {
    boolean fresh = entries.lastClean(MeasureSpan.WHOLE).isEmpty();
    if (ladder.goal().isEmpty() || ladder.day().isEmpty() || (fresh && ladder.clean().isEmpty())) {
      return Optional.empty();
    }
    PracticePlan practice =
        PracticePlan.of(plan, planning.scoringContext().level(), ladder.request(), entries);
    return Optional.of(new PracticeWords(practice, fresh).ladder());
  }
}
