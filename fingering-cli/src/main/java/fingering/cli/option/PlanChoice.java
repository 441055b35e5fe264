package fingering.cli.option;

import fingering.lesson.LessonPlan;
import fingering.lesson.PlanName;
import fingering.lesson.StoredLesson;
import fingering.music.Passage;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.PlanComparer;
import fingering.tables.FingeringException;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Which plan to make. */
public final class PlanChoice {
  @Spec(Spec.Target.MIXEE)
  CommandSpec command;

  @Option(
      names = "--choose",
      paramLabel = "PLAN",
      converter = Converters.PlanNameConverter.class,
      completionCandidates = CompletionCandidates.OfPlans.class,
      description =
          "A plan of 'compare', named by its position: first (or 1); third (or 3; on the cello it"
              + " stays in 4th); partly, which goes there for part of the music; second (or 2),"
              + " which shows 1st, 2nd and 3rd; or free (the default), the cheapest plan.")
  Optional<PlanName> typed = Optional.empty();

  @Mixin PrintedOption printed = new PrintedOption();

  /**
   * Checks the options before any work is done.
   *
   * @throws ParameterException if they contradict each other
   */
  public void check() {
    if (!isFree() && printed.keep) {
      throw new ParameterException(
          command.commandLine(), "--choose and --keep-printed cannot be combined; give only one");
    }
  }

  /** The name of the plan. */
  public PlanName name() {
    return typed.orElse(PlanName.FREE);
  }

  /**
   * Takes the chosen plan of a lesson. A plan that is typed replaces it; demands that are typed are
   * added to it.
   */
  public void from(StoredLesson lesson, DemandOptions demands) {
    if (typed.isEmpty()) {
      lesson
          .lesson()
          .chosen()
          .ifPresent(
              plan -> {
                typed = printed.keep ? Optional.empty() : plan.choose().map(PlanName::parse);
                demands.from(lesson, plan);
              });
    }
  }

  /**
   * The plan for a lesson to save; empty if nothing is asked of it.
   *
   * @param base the lesson to start from, whose chosen plan keeps its name
   * @param replaced whether a plan is typed that replaces that of the lesson
   */
  public Optional<LessonPlan> forLesson(
      DemandOptions demands, Optional<StoredLesson> base, boolean replaced) {
    Optional<LessonPlan> before = base.flatMap(lesson -> lesson.lesson().chosen());
    if (typed.isEmpty() && !demands.any()) {
      return Optional.empty();
    }
    String word = typed.map(PlanName::word).orElse("mine");
    LessonPlan plan = new LessonPlan(word, typed.map(PlanName::word), demands.typed());
    return Optional.of(replaced ? plan : before.map(old -> plan.withName(old.name())).orElse(plan));
  }

  /** Whether a plan is chosen. */
  public boolean given() {
    return typed.isPresent();
  }

  /** Whether the plan keeps what is printed. */
  public boolean keepsPrinted() {
    return printed.keep;
  }

  /** Whether the plan is free, not one of the plans of 'compare'. */
  public boolean isFree() {
    return name().isFree();
  }

  /** The brief of a free plan, named after its demands. */
  public Brief freeBrief(DemandOptions demands, Passage passage) {
    boolean asPrinted = printed.keep && passage.fingered();
    String title = demands.any() ? "as printed and demanded" : PlanComparer.AS_PRINTED;
    return keepingPrinted(asPrinted ? Brief.free(title) : demands.freeBrief());
  }

  /** The same brief, keeping what is printed in the part if the options say so. */
  public Brief keepingPrinted(Brief brief) {
    return brief.withKeepPrinted(printed.keep);
  }

  /**
   * The plan.
   *
   * @param free the brief of a free plan
   * @throws FingeringException if there is no such plan
   */
  public Plan plan(PlanComparer comparer, Brief free) {
    return name().plan(comparer, free);
  }
}
