package fingering.cli;

import fingering.musicxml.ChoiceException;
import fingering.scoring.Rules;
import fingering.scoring.Scoring;
import fingering.scoring.Weights;
import fingering.tempo.Level;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;

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
      description =
          "Your own points for some or all rules, a line each: shift = 20; the preset gives the rest.")
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
   * @throws ChoiceException if the file cannot be read or does not fit the rules; the message is
   *     one sentence
   */
  Charging charging(Students students) {
    String name = preset.or(() -> students.section().preset()).orElse(Weights.presets().get(0));
    Weights base = Weights.preset(name);
    Optional<Weights> own = weights.map(WeightsOptions::own);
    boolean whole = own.isPresent() && own.get().points().keySet().equals(base.points().keySet());
    return new Charging(
        Scoring.of(students.section().rules(), own.map(w -> w.orElse(base)).orElse(base)),
        weights.map(Path::toString),
        whole ? Optional.empty() : Optional.of(name),
        students,
        level.orElseGet(() -> Level.named(name)));
  }

  /**
   * The weights of a file, which need not name every rule.
   *
   * @throws ChoiceException if the file cannot be read or names what is no rule; the message is one
   *     sentence
   */
  static Weights own(Path file) {
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
