package fingering.cli.command;

import com.google.common.collect.ImmutableList;
import fingering.cli.option.DetailOptions;
import fingering.cli.option.InstrumentOptions;
import fingering.cli.option.WeightsOptions;
import fingering.musicxml.file.ScoreFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Compares plans for the built-in excerpt. */
@Command(
    name = DemoCommand.NAME,
    description = "Compares plans for a built-in viola excerpt, to show what the program does.",
    footer = {"", "Examples:", "  fingering demo", "  fingering demo --preset beginner"})
final class DemoCommand extends BaseCommand {
  static final String NAME = "demo";

  @Mixin InstrumentOptions build = new InstrumentOptions();

  @Mixin WeightsOptions weights = new WeightsOptions();

  @Mixin DetailOptions detail = new DetailOptions();

  @Override
  public Integer call() throws IOException {
    try (InputStream in = DemoCommand.class.getResourceAsStream("/fingering/demo/demo.musicxml")) {
      if (in == null) {
        throw new IllegalStateException("the demo is missing from the program");
      }
      String score = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      CompareCommand compare = new CompareCommand();
      compare.spec = spec;
      compare.reading.build = build;
      compare.player.weights = weights;
      compare.detail = detail;
      compare.withSecond = true;
      return compare.compare(ScoreFile.of(score, ImmutableList.of()), Optional.empty());
    }
  }
}
