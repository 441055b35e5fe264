package fingering.cli;

import fingering.musicxml.ChoiceException;
import fingering.scoring.Rules;
import fingering.scoring.Scoring;
import fingering.scoring.Weights;
import fingering.tempo.Level;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** What the rules charge; shared by the commands. */
final class WeightsOptions {
  @Option(
      names = "--preset",
      paramLabel = "PRESET",
      converter = PresetConverter.class,
      completionCandidates = Offered.Presets.class,
      description =
          "What the rules charge: common-practice (the default), first-years, intermediate or professional.")
  Optional<String> preset = Optional.empty();

  @Option(
      names = "--weights",
      paramLabel = "FILE",
      description = "Your own points for every rule, a line each: shift = 20.")
  Optional<Path> weights = Optional.empty();

  @Option(
      names = "--level",
      paramLabel = "LEVEL",
      converter = LevelConverter.class,
      completionCandidates = Offered.Presets.class,
      description =
          "How quick the player is, where other than as the preset: the name of a preset. It changes the comfortable tempo, and no plan.")
  Optional<Level> level = Optional.empty();

  /**
   * The rules with the weights that the options ask for, else with those of the students' preset.
   *
   * @throws ParameterException if they ask for two
   * @throws ChoiceException if the file cannot be read or does not fit the rules; the message is
   *     one sentence
   */
  Charging charging(CommandSpec spec, Students students) {
    if (preset.isPresent() && weights.isPresent()) {
      throw new ParameterException(
          spec.commandLine(), "--weights and --preset cannot be met together; give one");
    }
    String name = preset.or(() -> students.section().preset()).orElse(Weights.presets().get(0));
    Weights points = weights.map(WeightsOptions::own).orElseGet(() -> Weights.preset(name));
    return new Charging(
        Scoring.of(students.section().rules(), points),
        weights.isEmpty(),
        weights.map(Path::toString).orElse(name),
        students,
        level(name));
  }

  /** How quick the player is: as asked for, or as the preset says; by own weights the usual. */
  private Level level(String name) {
    return level.orElseGet(() -> Level.named(weights.isEmpty() ? name : Weights.presets().get(0)));
  }

  private static Weights own(Path file) {
    try {
      return Weights.parse(file.toString(), SmallFile.text(file, "weights"), Rules.all());
    } catch (ChoiceException e) {
      throw e;
    } catch (IllegalArgumentException e) {
      throw new ChoiceException(e.getMessage() + ".");
    }
  }

  static final class PresetConverter implements ITypeConverter<String> {
    @Override
    public String convert(String text) {
      return ScoreOptions.converted(() -> Weights.presetName(text));
    }
  }

  static final class LevelConverter implements ITypeConverter<Level> {
    @Override
    public Level convert(String text) {
      return ScoreOptions.converted(() -> Level.named(text));
    }
  }
}
