package fingering.cli.option;

import fingering.cli.file.NewFiles;
import fingering.plan.Plan;
import fingering.plan.marks.MarkedCopy;
import fingering.plan.marks.MarkedCopy.Extent;
import fingering.plan.marks.StringSigns;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Whether and how a plan is written into a copy of the score. */
public final class WriteOptions {
  @Spec(Spec.Target.MIXEE)
  CommandSpec command;

  @Option(
      names = "--write",
      paramLabel = "MARKED",
      description = "Write the plan into a new copy of the score (.musicxml, .xml or .mxl).")
  Optional<Path> target = Optional.empty();

  @Option(
      names = "--only",
      paramLabel = "EXTENT",
      description =
          "With --write: score (all of it, the default), part, or excerpt (the measures of --measures).")
  Optional<Extent> only = Optional.empty();

  @Option(
      names = "--string-marks",
      paramLabel = "MARKS",
      description =
          "With --write: how strings are marked: words (III above the staff where the string is in doubt; the default for a part or an excerpt), elements (numbers that many notation programs do not show; the default for a score), both or none.")
  Optional<StringSigns> signs = Optional.empty();

  @Option(
      names = "--sparing",
      description =
          "With --write: mark only what a player needs: shifts, fourth fingers instead of open strings, stretches, slides, double stops. Leave it out to reuse the plan with --keep-printed.")
  boolean sparing;

  /** Whether the plan is written. */
  public boolean wanted() {
    return target.isPresent();
  }

  /**
   * Checks the options before any work is done.
   *
   * @throws ParameterException if they do not fit together
   */
  public void check(ScoreOptions reading) {
    if (target.isEmpty()) {
      refuseAlone(sparing, "--sparing changes how --write marks the copy");
      refuseAlone(only.isPresent(), "--only says how much --write writes");
      refuseAlone(signs.isPresent(), "--string-marks changes how --write marks the copy");
    }
    if (extent() == Extent.EXCERPT && reading.measures.isEmpty()) {
      throw new ParameterException(
          command.commandLine(), "--only excerpt needs the measures; give --measures too");
    }
  }

  private void refuseAlone(boolean given, String reason) {
    if (given) {
      throw new ParameterException(command.commandLine(), reason + "; give --write too");
    }
  }

  private Extent extent() {
    return only.orElse(Extent.SCORE);
  }

  /** Writes a plan, if it is wanted. */
  public void write(Plan plan, PlanningContext planning, NewFiles files) {
    if (target.isPresent()) {
      files.score(planning.file(), text(plan, planning), target.get());
    }
  }

  private String text(Plan plan, PlanningContext planning) {
    return new MarkedCopy(extent(), sparing, signs.orElseGet(extent()::usualStrings))
        .of(planning.file().text(), plan);
  }
}
