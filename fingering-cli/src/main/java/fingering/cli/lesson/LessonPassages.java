package fingering.cli.lesson;

import com.google.common.collect.ImmutableList;
import fingering.cli.option.DemandOptions;
import fingering.cli.option.PlanningContext;
import fingering.cli.option.PlayerOptions;
import fingering.cli.option.ScoreArgument;
import fingering.cli.option.ScoreOptions;
import fingering.lesson.StoredLesson;
import fingering.music.Passage;
import fingering.musicxml.SelectionException;
import fingering.plan.Plan;
import fingering.tempo.PlayerSpeed;
import java.util.Optional;

/** The plans that several students play of the same passage. */
public final class LessonPassages {
  /**
   * The plan of one student.
   *
   * @param student the student as the lesson names it, or else the name of the lesson
   * @param plan the chosen plan of the lesson, or else the cheapest one
   * @param level how fast the student is
   */
  public record StudentPlan(String student, Plan plan, PlayerSpeed level) {}

  private LessonPassages() {}

  /**
   * Makes the plan of each lesson.
   *
   * @throws SelectionException if the lessons are not about the same score, part and measures
   */
  public static ImmutableList<StudentPlan> of(ImmutableList<StoredLesson> lessons) {
    boolean named =
        lessons.stream().map(LessonPassages::student).distinct().count() == lessons.size();
    ImmutableList<StudentPlan> plans =
        lessons.stream()
            .map(lesson -> plan(lesson, named ? student(lesson) : lesson.name()))
            .collect(ImmutableList.toImmutableList());
    for (int i = 1; i < plans.size(); i++) {
      requireSame(lessons.get(0), plans.get(0), lessons.get(i), plans.get(i));
    }
    return plans;
  }

  private static String student(StoredLesson lesson) {
    return lesson.lesson().student().orElse(lesson.name());
  }

  private static StudentPlan plan(StoredLesson lesson, String name) {
    ScoreArgument score = new ScoreArgument();
    ScoreOptions reading = new ScoreOptions();
    PlayerOptions player = new PlayerOptions();
    DemandOptions none = new DemandOptions();
    score.from(lesson);
    reading.from(lesson, score);
    player.from(lesson);
    PlanningContext planning = PlanningContext.read(score.read(), reading, player);
    Plan plan =
        lesson
            .lesson()
            .chosen()
            .map(chosen -> LessonPlans.plan(lesson, chosen, planning, player, none))
            .orElseGet(() -> planning.comparer(player, none, false).plan(none.freeBrief()));
    return new StudentPlan(name, plan, planning.scoringContext().level());
  }

  private static void requireSame(
      StoredLesson one, StudentPlan first, StoredLesson two, StudentPlan second) {
    Optional<String> difference =
        one.scoreFile()
                .toAbsolutePath()
                .normalize()
                .equals(two.scoreFile().toAbsolutePath().normalize())
            ? difference(first.plan().passage(), second.plan().passage())
            : Optional.of("score");
    if (difference.isPresent()) {
      throw new SelectionException(
          "%s and %s differ in the %s: several lessons are compared on the same score, part and measures."
              .formatted(one.file(), two.file(), difference.get()));
    }
  }

  private static Optional<String> difference(Passage one, Passage other) {
    if (!one.partName().equals(other.partName())) {
      return Optional.of("part");
    }
    boolean same =
        one.notes().size() == other.notes().size()
            && one.notes().get(0).place().equals(other.notes().get(0).place());
    return same ? Optional.empty() : Optional.of("measures");
  }
}
