package fingering.cli.option;

import fingering.cli.student.ScoringContext;
import fingering.cli.student.Students;
import fingering.scoring.Scoring;
import fingering.scoring.Weights;
import fingering.scoring.rules.StandardRules;
import fingering.tables.FingeringException;
import fingering.tempo.PlayerSpeed;
import fingering.userfile.SmallFile;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The weights of the rules, and the speed of the player. */
public final class WeightsOptions {
  @Option(
      names = "--preset",
      paramLabel = "PRESET",
      converter = Converters.PresetConverter.class,
      completionCandidates = CompletionCandidates.OfPresets.class,
      description =
          "What each rule costs: common-practice (the default), beginner, intermediate or advanced.")
  Optional<String> preset = Optional.empty();

  @Option(
      names = "--weights",
      paramLabel = "FILE",
      description =
          "Your own points for some or all rules, such as 'shift: 20'; the preset gives the rest.")
  Optional<Path> weights = Optional.empty();

  @Option(
      names = "--level",
      paramLabel = "LEVEL",
      converter = Converters.SpeedConverter.class,
      completionCandidates = CompletionCandidates.OfPresets.class,
      description =
          "How fast the player is: the name of a preset. Changes the comfortable tempo, not the plan. Default: the preset.")
  Optional<PlayerSpeed> level = Optional.empty();

  /**
   * The rules with the weights of the options, else with those of the students' preset.
   *
   * @throws FingeringException if the file cannot be read or does not fit the rules; the message is
   *     one sentence
   */
  public ScoringContext scoring(Students students) {
    String name = preset.or(() -> students.section().preset()).orElse(Weights.presets().get(0));
    Weights base = Weights.preset(name);
    Optional<Weights> own = weights.map(WeightsOptions::own);
    boolean complete = own.isPresent() && own.get().orElse(base).equals(own.get());
    return new ScoringContext(
        Scoring.of(students.section().rules(), own.map(w -> w.orElse(base)).orElse(base)),
        weights.map(Path::toString),
        complete ? Optional.empty() : Optional.of(name),
        students,
        level.orElseGet(() -> PlayerSpeed.named(name)));
  }

  /**
   * Reads the weights of a file, which may leave out rules.
   *
   * @throws FingeringException if the file cannot be read or names an unknown rule; the message is
   *     one sentence
   */
  public static Weights own(Path file) {
    return Weights.parse(
        file.toString(), SmallFile.text(file, "a weights file"), StandardRules.all());
  }
}
