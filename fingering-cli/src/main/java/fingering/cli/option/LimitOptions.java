package fingering.cli.option;

import fingering.musicxml.file.ScoreLimits;
import picocli.CommandLine.Option;

/** The largest score that is read. */
public final class LimitOptions {
  @Option(
      names = "--limit",
      paramLabel = "NAME=NUMBER",
      converter = Converters.LimitsConverter.class,
      description =
          "The largest score to accept, such as measures=20000,bytes=64M. Names: bytes, unpacked, ratio, files, nesting, parts, measures, notes.")
  ScoreLimits limits = ScoreLimits.DEFAULT;
}
