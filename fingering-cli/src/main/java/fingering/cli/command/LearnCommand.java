package fingering.cli.command;

import com.google.common.collect.ImmutableList;
import fingering.cli.file.OutputFile;
import fingering.cli.option.HandOptions;
import fingering.cli.option.PartOptions;
import fingering.cli.option.TuneOptions;
import fingering.cli.option.WeightsOptions;
import fingering.cli.terminal.ExitCode;
import fingering.cli.terminal.TextLayout;
import fingering.cli.text.WeightsText;
import fingering.learning.LearnedWeights;
import fingering.learning.Learner;
import fingering.learning.LearningProgress;
import fingering.learning.TrainingExample;
import fingering.scoring.Weights;
import fingering.scoring.rules.StandardRules;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Learns the weights of the rules from fingered scores. */
@Command(
    name = "learn",
    description = "Learns how much each rule should count from scores that you have fingered.",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    footer = {
      "",
      "A finger should be printed at nearly every note, and the string where it is not",
      "plain. Scores of the same music are one piece, fingered by several players.",
      "",
      "Examples:",
      "  fingering plan docs/demo/demo.musicxml --choose third --write mine.musicxml",
      "  fingering learn mine.musicxml --output my-weights.yaml",
      "  fingering learn mine.musicxml --start my-weights.yaml --strength 10 \\",
      "    --output more-weights.yaml"
    })
final class LearnCommand implements Callable<Integer> {
  /** Columns of the line that tells how far it is. */
  private static final int PROGRESS = 60;

  @Spec CommandSpec spec;

  @Parameters(
      paramLabel = "SCORE",
      arity = "1..*",
      description = "Fingered scores in MusicXML (.musicxml, .xml, .mxl) or ABC notation (.abc).")
  List<Path> scores = List.of();

  @Mixin TuneOptions tunes = new TuneOptions();

  @Mixin PartOptions reading = new PartOptions();

  @Option(
      names = "--start",
      paramLabel = "PRESET",
      description =
          "A file of weights to start from; common practice for the rules that it leaves out.")
  Optional<Path> start = Optional.empty();

  @Option(
      names = "--strength",
      paramLabel = "NUMBER",
      description =
          "How strongly the start weights hold: 30 (the default) bends them gently, 3 follows the scores more closely, 0 follows nothing else.")
  double strength = Learner.STRENGTH;

  @Mixin HandOptions hand = new HandOptions();

  @Mixin OutputFile output = new OutputFile();

  @Override
  public Integer call() {
    if (!(strength >= 0 && strength <= Learner.STRONGEST)) {
      throw new ParameterException(
          spec.commandLine(),
          "--strength is a number from 0 to %.0f, such as 30".formatted(Learner.STRONGEST));
    }
    output.check();
    Weights from = startWeights();
    ImmutableList<TrainingExample> examples =
        scores.stream().map(this::example).collect(ImmutableList.toImmutableList());
    LearnedWeights learned =
        Learner.of(examples, StandardRules.all(), from, hand.hand()).learn(strength, progress());
    endProgress();
    String begun = start.map(LearnCommand::name).orElse("common practice");
    output.print(WeightsText.of(learned, begun), spec);
    return ExitCode.DONE;
  }

  private TrainingExample example(Path score) {
    return new TrainingExample(name(score), reading.readWhole(tunes.read(score)));
  }

  private static String name(Path file) {
    return file.getFileName().toString();
  }

  private Weights startWeights() {
    Weights usual = Weights.commonPractice();
    return start.map(file -> WeightsOptions.own(file).orElse(usual)).orElse(usual);
  }

  /** A line that is written over, where somebody is looking. */
  private LearningProgress progress() {
    return CommandLine.Help.Ansi.AUTO.enabled()
        ? (left, step) -> tell("learning: step %d, %d more times to go".formatted(step, left))
        : LearningProgress.SILENT;
  }

  private void endProgress() {
    if (CommandLine.Help.Ansi.AUTO.enabled()) {
      tell("");
    }
  }

  private void tell(String progress) {
    PrintWriter err = spec.commandLine().getErr();
    err.print("\r" + TextLayout.pad(progress, PROGRESS) + "\r");
    err.flush();
  }
}
