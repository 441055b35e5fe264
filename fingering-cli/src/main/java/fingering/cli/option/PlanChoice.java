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
  PlanName name = PlanName.FREE;

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

  /** Whether the user chose a plan, or to keep what is printed. */
  public boolean given() {
    return printed.keep || command.commandLine().getParseResult().hasMatchedOption("--choose");
  }

  /** Whether the plan is free, not one of the plans of 'compare'. */
  public boolean isFree() {
    return name.isFree();
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
    return name.plan(comparer, free);
  }
}
