package fingering.cli.command;

import com.google.common.collect.ImmutableList;
import fingering.cli.lesson.LessonPlans;
import fingering.cli.option.DemandOptions;
import fingering.cli.option.LadderOptions;
import fingering.cli.option.PlanningContext;
import fingering.cli.option.PlayerOptions;
import fingering.cli.option.ScoreArgument;
import fingering.cli.option.ScoreOptions;
import fingering.cli.text.PageOutput;
import fingering.lesson.LessonPlan;
import fingering.lesson.StoredLesson;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.Score;
import fingering.page.PageContent;
import fingering.page.view.HandoutContent;
import fingering.page.view.Ladder;
import fingering.page.view.Paper;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.plan.PlanComparer;
import fingering.search.Cancellation;
import fingering.tables.FingeringException;
import fingering.web.Adviser;
import java.util.Optional;

/** Makes the plans of the local page as 'compare --lesson' does. */
public final class LessonAdviser implements Adviser {
  @Override
  public ScoreFile read(StoredLesson lesson) {
    ScoreArgument score = new ScoreArgument();
    score.from(lesson);
    return score.read();
  }

  @Override
  public PageContent compare(
      ScoreFile file, Score score, StoredLesson lesson, Cancellation cancellation) {
    ScoreOptions reading = new ScoreOptions();
    PlayerOptions player = new PlayerOptions();
    DemandOptions demands = new DemandOptions();
    reading.from(lesson);
    player.from(lesson);
    PlanningContext planning = PlanningContext.of(file, score, reading, player);
    PlanComparer comparer = planning.comparer(player, demands, true).withCancellation(cancellation);
    Comparison usual = comparer.comparePositions(false);
    ImmutableList.Builder<Plan> plans = ImmutableList.<Plan>builder().addAll(usual.plans());
    for (LessonPlan plan : LessonPlans.own(lesson)) {
      plans.add(LessonPlans.plan(lesson, plan, planning, player, demands));
    }
    return PageOutput.content(
        new Comparison(usual.passage(), plans.build(), usual.remarks(), usual.details()),
        comparer,
        planning.scoringContext(),
        planning.printed());
  }

  @Override
  public HandoutContent handout(
      ScoreFile file, Score score, StoredLesson lesson, PageContent plans) {
    ScoreOptions reading = new ScoreOptions();
    PlayerOptions player = new PlayerOptions();
    LadderOptions ladder = new LadderOptions();
    reading.from(lesson);
    player.from(lesson);
    ladder.from(lesson);
    PlanningContext planning = PlanningContext.of(file, score, reading, player);
    Plan plan =
        lesson
            .lesson()
            .chosen()
            .flatMap(
                chosen ->
                    plans.comparison().plans().stream()
                        .filter(made -> made.name().equals(chosen.name()))
                        .findFirst())
            .orElse(plans.main());
    return TakenHome.of(
        Paper.A4, plan, Optional.empty(), planning, ladder, ladder(plan, planning, ladder));
  }

  /** The ladder to climb; empty once the hearing is over, or if the journal cannot be read. */
  private static Optional<Ladder> ladder(Plan plan, PlanningContext planning, LadderOptions ladder) {
    try {
      return TakenHome.ladder(plan, planning, ladder, ladder.entries());
    } catch (FingeringException e) {
      return Optional.empty();
    }
  }
}
