package fingering.cli;

import fingering.music.Passage;
import fingering.musicxml.ScoreFile;
import fingering.plan.Comparer;
import fingering.plan.Comparison;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows plans side by side. */
@Command(
    name = "compare",
    description = "Shows a first-position plan and one that stays higher up, side by side.",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    footer = {
      "",
      "The higher plan stays in 3rd position (cello: 4th), even where that costs more.",
      "",
      "Examples:",
      "  fingering compare part.musicxml",
      "  fingering compare quartet.mxl --part Viola --measures 'B to D' --with-second",
      "  fingering compare part.musicxml --format json --output plans.json"
    })
final class CompareCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Parameters(paramLabel = "SCORE", description = "A score in MusicXML: .musicxml, .xml or .mxl.")
  Path score;

  @Mixin ScoreOptions reading = new ScoreOptions();

  @Option(
      names = "--with-second",
      description = "Add the plan that shows 1st, 2nd and 3rd position.")
  boolean withSecond;

  @Mixin HandOptions hand = new HandOptions();

  @Mixin WeightsOptions weights = new WeightsOptions();

  @Mixin PlayerOptions player = new PlayerOptions();

  @Mixin OutputOptions output = new OutputOptions();

  @Override
  public Integer call() {
    return compare(ScoreFile.read(score));
  }

  int compare(ScoreFile file) {
    output.check();
    Student student = player.student();
    Charging charging = weights.charging(spec, student);
    Passage passage = reading.read(file, student);
    Comparison comparison =
        Comparer.of(passage, charging.scoring(), student.hand(hand), reading.allow.set())
            .compare(withSecond);
    String text =
        switch (output.format) {
          case TEXT ->
              ComparisonText.of(comparison, charging, OutputOptions.columns(), output.style());
          case JSON -> PlanJson.of(comparison, charging);
        };
    output.print(text, spec.commandLine().getOut());
    return 0;
  }
}
