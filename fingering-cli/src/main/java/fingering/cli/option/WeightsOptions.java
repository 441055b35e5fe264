package fingering.cli.option;

import fingering.scoring.Scoring;
import fingering.scoring.Weights;
import fingering.scoring.rules.StandardRules;
import fingering.tables.FingeringException;
import fingering.tempo.PlayerSpeed;
import fingering.userfile.SmallFile;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;

/** What the rules charge; shared by the commands. */
public final class WeightsOptions {
  @Option(
      names = "--preset",
      paramLabel = "PRESET",
      converter = PresetConverter.class,
      completionCandidates = CompletionCandidates.Presets.class,
      description =
          "What the rules charge: common-practice (the default), beginner, intermediate or advanced.")
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
      converter = LevelConverter.class,
      completionCandidates = CompletionCandidates.Presets.class,
      description =
          "How quick the player is, where other than as the preset: the name of a preset. It changes the comfortable tempo, and no plan.")
  Optional<PlayerSpeed> level = Optional.empty();

  /**
   * The rules with the weights that the options ask for, else with those of the students' preset.
   *
   * @throws FingeringException if the file cannot be read or does not fit the rules; the message is
   *     one sentence
   */
  public ScoringContext charging(Students students) {
    String name = preset.or(() -> students.section().preset()).orElse(Weights.presets().get(0));
    Weights base = Weights.preset(name);
    Optional<Weights> own = weights.map(WeightsOptions::own);
    boolean whole = own.isPresent() && own.get().points().keySet().equals(base.points().keySet());
    return new ScoringContext(
        Scoring.of(students.section().rules(), own.map(w -> w.orElse(base)).orElse(base)),
        weights.map(Path::toString),
        whole ? Optional.empty() : Optional.of(name),
        students,
        level.orElseGet(() -> PlayerSpeed.named(name)));
  }

  /**
   * The weights of a file, which need not name every rule.
   *
   * @throws FingeringException if the file cannot be read or names an unknown rule; the message is
   *     one sentence
   */
  public static Weights own(Path file) {
    return Weights.parse(
        file.toString(), SmallFile.text(file, "a weights file"), StandardRules.all());
  }

  static final class PresetConverter implements ITypeConverter<String> {
    @Override
    public String convert(String text) {
      return ScoreOptions.converted(() -> Weights.presetName(text));
    }
  }

  static final class LevelConverter implements ITypeConverter<PlayerSpeed> {
    @Override
    public PlayerSpeed convert(String text) {
      return ScoreOptions.converted(() -> PlayerSpeed.named(text));
    }
  }
}
