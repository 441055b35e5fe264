package fingering.cli.command;

import com.google.common.collect.ImmutableList;
import fingering.cli.option.HandOptions;
import fingering.cli.option.PartOptions;
import fingering.cli.option.TuneOptions;
import fingering.cli.option.WeightsOptions;
import fingering.cli.output.OutputFile;
import fingering.cli.terminal.TextLayout;
import fingering.cli.text.WeightsText;
import fingering.learning.LearnedWeights;
import fingering.learning.Learner;
import fingering.learning.LearningMethod;
import fingering.learning.LearningProgress;
import fingering.learning.TrainingExample;
import fingering.scoring.Weights;
import fingering.scoring.rules.StandardRules;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Learns the weights of the rules from fingered scores. */
@Command(
    name = "learn",
    description = "Learns how much each rule should cost from scores that you have fingered.",
    footer = {
      "",
      "Print a finger at nearly every note, and the string wherever it is not clear.",
      "Several scores of the same music count as one piece with several fingerings.",
      "",
      "Examples:",
      "  fingering plan docs/demo/demo.musicxml --choose third --write mine.musicxml",
      "  fingering learn mine.musicxml --output my-weights.yaml",
      "  fingering learn mine.musicxml --start my-weights.yaml --strength 10 \\",
      "    --output more-weights.yaml"
    })
final class LearnCommand extends BaseCommand {
  /** Columns of the progress line. */
  private static final int PROGRESS = 60;

  @Parameters(
      paramLabel = "SCORE",
      arity = "1..*",
      description = "Fingered scores in MusicXML (.musicxml, .xml, .mxl) or ABC notation (.abc).")
  List<Path> scores = List.of();

  @Mixin TuneOptions tunes = new TuneOptions();

  @Mixin PartOptions reading = new PartOptions();

  @Option(
      names = "--start",
      paramLabel = "FILE",
      description =
          "A file of weights to start from. The rules that it leaves out start from common-practice.")
  Optional<Path> start = Optional.empty();

  @Option(
      names = "--strength",
      paramLabel = "NUMBER",
      description =
          "How strongly the starting weights count: 30 (the default) changes them gently, 3 follows the scores more closely, 0 follows only the scores.")
  double strength = LearningMethod.STRENGTH;

  @Option(
      names = "--habit",
      description =
          "Also learn a habit: how players finger a note, given the notes around it. It is kept only if it helps with held-out pieces, which takes thousands of fingered notes of many pieces.")
  boolean habit;

  @Mixin HandOptions hand = new HandOptions();

  @Mixin OutputFile output = new OutputFile();

  @Override
  public Integer call() {
    if (!(strength >= 0 && strength <= LearningMethod.MAX_STRENGTH)) {
      throw usageError(
          "--strength must be a number from 0 to %.0f, such as 30"
              .formatted(LearningMethod.MAX_STRENGTH));
    }
    output.check();
    Weights from = startWeights();
    ImmutableList<TrainingExample> examples =
        scores.stream().map(this::example).collect(ImmutableList.toImmutableList());
    LearnedWeights learned =
        Learner.of(examples, StandardRules.all(), from, hand.hand())
            .learn(
                habit ? LearningMethod.rulesAndHabit(strength) : LearningMethod.rules(strength),
                progress());
    endProgress();
    String startName = start.map(LearnCommand::name).orElse("common practice");
    output.print(WeightsText.of(learned, startName), spec);
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

  /** A progress line that overwrites itself, on a terminal only. */
  private LearningProgress progress() {
    return CommandLine.Help.Ansi.AUTO.enabled()
        ? (left, step) -> show("learning: step %d, %d rounds left".formatted(step, left))
        : LearningProgress.SILENT;
  }

  private void endProgress() {
    if (CommandLine.Help.Ansi.AUTO.enabled()) {
      show("");
    }
  }

  private void show(String progress) {
    PrintWriter err = spec.commandLine().getErr();
    err.print("\r" + TextLayout.pad(progress, PROGRESS) + "\r");
    err.flush();
  }
}
