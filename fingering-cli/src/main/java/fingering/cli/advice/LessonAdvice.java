package fingering.cli.advice;

import com.google.common.collect.ImmutableList;
import fingering.cli.file.NewFiles;
import fingering.cli.file.OwnFiles;
import fingering.cli.option.LadderOptions;
import fingering.cli.option.PlanningContext;
import fingering.cli.option.PlayerOptions;
import fingering.cli.practice.TakenHome;
import fingering.cli.text.PageOutput;
import fingering.cli.text.PlanLine;
import fingering.lesson.LessonPlan;
import fingering.lesson.LessonPlanner;
import fingering.lesson.StoredLesson;
import fingering.page.PageContent;
import fingering.page.live.PracticeNow;
import fingering.page.view.HandoutContent;
import fingering.page.view.Ladder;
import fingering.page.view.Paper;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.plan.marks.MarkedCopy;
import fingering.search.Cancellation;
import fingering.tables.FingeringException;
import fingering.web.lesson.Advice;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The plans of a lesson, and what the commands say about them.
 *
 * @param planning the music, the student and the rules
 * @param planner makes the plans
 * @param lesson the lesson, for the names of its files
 * @param usual the plans that a teacher compares
 * @param content what the page of these plans shows
 */
record LessonAdvice(
    PlanningContext planning,
    LessonPlanner planner,
    StoredLesson lesson,
    Comparison usual,
    PageContent content)
    implements Advice {

  static LessonAdvice of(
      PlanningContext planning,
      PlayerOptions player,
      StoredLesson lesson,
      Cancellation cancellation) {
    LessonPlanner planner = planning.lessonPlanner(player);
    LessonPlanner patient = planner.withCancellation(cancellation);
    Comparison usual = patient.usual();
    PageContent content =
        named(
            PageOutput.content(
                usual, patient.comparer(), planning.scoringContext(), planning.printed()),
            lesson);
    return new LessonAdvice(planning, planner, lesson, usual, content);
  }

  /** The content with the name of the student in place of the file. */
  private static PageContent named(PageContent content, StoredLesson lesson) {
    String file = lesson.studentFile().map(Path::toString).orElse("");
    String name = lesson.lesson().student().orElse("");
    return file.isEmpty()
        ? content
        : content.withAbout(
            content.about().stream()
                .map(line -> line.replace(file, name))
                .collect(ImmutableList.toImmutableList()));
  }

  @Override
  public Plan plan(LessonPlan wanted, Cancellation cancellation) {
    return planner.withCancellation(cancellation).plan(lesson.here(wanted));
  }

  @Override
  public String line(Plan plan) {
    return PlanLine.of(plan, planning.scoringContext().level());
  }

  @Override
  public ImmutableList<String> remarks(Plan plan) {
    return PlanLine.remarks(plan, planning.scoringContext().students());
  }

  @Override
  public PracticeNow practice(Plan plan, StoredLesson now, LocalDate today) {
    return LessonPractice.of(
        named(plan), planning.scoringContext().level(), ladder(now, today), today);
  }

  @Override
  public HandoutContent handout(Plan plan, StoredLesson now, LocalDate today, Paper paper) {
    LadderOptions ladder = ladder(now, today);
    return TakenHome.of(
        paper,
        named(plan),
        Optional.empty(),
        planning,
        now.lesson().circles(),
        ladder,
        days(plan, ladder));
  }

  /** A plan under the name that a student understands, if it is one of the usual ones. */
  private Plan named(Plan plan) {
    return usual.plans().stream()
        .filter(plan::sameFingering)
        .findFirst()
        .map(one -> plan.withName(one.name()))
        .orElse(plan);
  }

  private static LadderOptions ladder(StoredLesson lesson, LocalDate today) {
    LadderOptions ladder = new LadderOptions();
    ladder.from(lesson);
    ladder.on(today);
    return ladder;
  }

  /** The ladder to climb; empty once the hearing is over, or if the journal cannot be read. */
  private Optional<Ladder> days(Plan plan, LadderOptions ladder) {
    try {
      return TakenHome.ladder(plan, planning, ladder, ladder.entries());
    } catch (FingeringException e) {
      return Optional.empty();
    }
  }

  @Override
  public boolean write(Plan plan, MarkedCopy copy, Path target) {
    if (Files.exists(target, LinkOption.NOFOLLOW_LINKS) && !OwnFiles.isUnchangedScore(target)) {
      return false;
    }
    try (NewFiles files = new NewFiles()) {
      files.score(planning.file(), copy.of(planning.file().text(), plan), target);
      files.publish();
      return true;
    }
  }
}
