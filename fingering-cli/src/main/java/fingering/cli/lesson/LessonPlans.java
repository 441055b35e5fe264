package fingering.cli.lesson;

import com.google.common.collect.ImmutableList;
import fingering.cli.file.BriefFile;
import fingering.cli.option.DemandOptions;
import fingering.cli.option.PlanningContext;
import fingering.cli.option.PlayerOptions;
import fingering.lesson.LessonPlan;
import fingering.lesson.PlanName;
import fingering.lesson.StoredLesson;
import fingering.plan.Plan;
import fingering.tables.FingeringException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The plans of lessons as plans of the music. */
public final class LessonPlans {
  private LessonPlans() {}

  /** A plan for a lesson, with the names of its files as seen from the folder of the lesson. */
  static LessonPlan there(Path lesson, LessonPlan plan) {
    return plan.withFiles(name -> StoredLesson.nameBeside(lesson, Path.of(name)));
  }

  /**
   * Makes a plan of a lesson.
   *
   * @param lesson the lesson, whose folder has the earlier plans that it keeps
   * @param typed demands that are typed, for all plans
   */
  public static Plan plan(
      StoredLesson lesson,
      LessonPlan wanted,
      PlanningContext planning,
      PlayerOptions player,
      DemandOptions typed) {
    return typed.plan(planning.lessonPlanner(player), lesson, wanted);
  }

  /**
   * The plans of a lesson that 'compare' does not show anyway: those with demands of their own, and
   * those between first and third position.
   */
  public static ImmutableList<LessonPlan> own(StoredLesson lesson) {
    return lesson.lesson().plans().stream()
        .filter(plan -> !plan.demands().isEmpty())
        .collect(ImmutableList.toImmutableList());
  }

  /**
   * The plans for a lesson to save after 'compare', the chosen one first.
   *
   * @param choice the name of the chosen plan: of one that is typed, of one of the lesson, or of a
   *     plan of 'compare'; empty if none is chosen
   * @param typed the plans typed as a name and demands
   * @param base the lesson to start from
   * @throws FingeringException if there is no plan of the chosen name
   */
  public static ImmutableList<LessonPlan> chosen(
      Optional<String> choice,
      List<String> typed,
      DemandOptions demands,
      Optional<StoredLesson> base) {
    ImmutableList<LessonPlan> own =
        typed.stream().map(BriefFile::typedPlan).collect(ImmutableList.toImmutableList());
    ImmutableList<LessonPlan> known =
        ImmutableList.<LessonPlan>builder()
            .addAll(own)
            .addAll(base.map(LessonPlans::allHere).orElse(ImmutableList.of()))
            .build();
    Optional<LessonPlan> first =
        choice
            .map(
                name ->
                    known.stream()
                        .filter(plan -> plan.name().equals(name))
                        .findFirst()
                        .map(plan -> plan.with(demands.typed()))
                        .orElseGet(() -> named(PlanName.parse(name), demands)))
            .or(() -> own.isEmpty() ? mine(demands) : Optional.empty());
    ImmutableList.Builder<LessonPlan> all = ImmutableList.builder();
    first.ifPresent(all::add);
    own.stream()
        .filter(plan -> first.map(LessonPlan::name).filter(plan.name()::equals).isEmpty())
        .forEach(all::add);
    return all.build();
  }

  static ImmutableList<LessonPlan> allHere(StoredLesson lesson) {
    return lesson.lesson().plans().stream()
        .map(lesson::here)
        .collect(ImmutableList.toImmutableList());
  }

  private static LessonPlan named(PlanName name, DemandOptions demands) {
    if (!name.known()) {
      throw new FingeringException(
          "'%s' is not a plan for a lesson; write first, third (on the cello it stays in 4th), partly, second, free, or the name of a plan of your own"
              .formatted(name));
    }
    return new LessonPlan(name.word(), Optional.of(name.word()), demands.typed());
  }

  /** The plan that consists of demands; empty if there are none. */
  static Optional<LessonPlan> mine(DemandOptions demands) {
    return demands.any()
        ? Optional.of(new LessonPlan("mine", Optional.empty(), demands.typed()))
        : Optional.empty();
  }
}
