package fingering.cli.command;

import com.google.common.collect.ImmutableList;
import fingering.cli.option.InstrumentOptions;
import fingering.cli.option.WeightsOptions;
import fingering.musicxml.file.ScoreFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Compares plans for the excerpt that comes with the program. */
@Command(
    name = "demo",
    description =
        "Compares plans for a viola excerpt that comes with the program: the quickest way to see what it does.",
    mixinStandardHelpOptions = true,
    footer = {"", "Examples:", "  fingering demo", "  fingering demo --preset beginner"})
final class DemoCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin InstrumentOptions built = new InstrumentOptions();

  @Mixin WeightsOptions weights = new WeightsOptions();

  @Override
  public Integer call() throws IOException {
    try (InputStream in = DemoCommand.class.getResourceAsStream("/fingering/demo/demo.musicxml")) {
      if (in == null) {
        throw new IllegalStateException("the demo is missing from the program");
      }
      String score = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      CompareCommand compare = new CompareCommand();
      compare.spec = spec;
      compare.reading.built = built;
      compare.weights = weights;
      compare.withSecond = true;
      return compare.compare(ScoreFile.of(score, ImmutableList.of()));
    }
  }
}
