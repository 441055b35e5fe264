package fingering.cli.option;

import fingering.music.Passage;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.PlanComparer;
import fingering.tables.FingeringException;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Which plan to make; shared by the commands that make one. */
public final class PlanChoice {
  @Spec(Spec.Target.MIXEE)
  CommandSpec spec;

  @Option(
      names = "--choose",
      paramLabel = "PLAN",
      converter = PlanName.Converter.class,
      completionCandidates = CompletionCandidates.Plans.class,
      description =
          "A plan of 'compare', called by its position, not its column: first (or 1), third (or 3; cello: the one that stays in 4th), or second (or 2), which shows 1st, 2nd and 3rd; free (the default) is the cheapest of all.")
  PlanName choose = PlanName.FREE;

  @Mixin PrintedOption printed = new PrintedOption();

  /** Refuses what cannot be met together, before any work is done. */
  public void check() {
    if (!free() && printed.kept) {
      throw new ParameterException(
          spec.commandLine(), "--choose and --keep-printed cannot be met together; give one");
    }
  }

  /** Whether none of the plans of 'compare' is asked for. */
  public boolean free() {
    return choose.isFree();
  }

  /** The brief of a plan of free choice, called by what it has to meet. */
  public Brief brief(DemandOptions demands, Passage passage) {
    boolean asPrinted = printed.kept && passage.fingered();
    String named = demands.any() ? "as printed and demanded" : PlanComparer.AS_PRINTED;
    return kept(asPrinted ? Brief.free(named) : demands.free());
  }

  /** The same brief, keeping what is printed where that is asked for. */
  public Brief kept(Brief brief) {
    return brief.withKeepPrinted(printed.kept);
  }

  /**
   * The plan.
   *
   * @param free what a plan of free choice has to meet
   * @throws FingeringException if there is none
   */
  public Plan plan(PlanComparer comparer, Brief free) {
    return choose.plan(comparer, () -> free);
  }
}
