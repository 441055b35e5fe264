package fingering.cli.option;

import fingering.musicxml.file.ScoreLimits;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;

/** How much of a score is read; shared by the commands. */
public final class LimitOptions {
  @Option(
      names = "--limit",
      paramLabel = "NAME=NUMBER",
      converter = LimitsConverter.class,
      description =
          "How much a score may hold before it is refused, such as measures=20000,bytes=64M; names are bytes, unpacked, ratio, files, nesting, parts, measures and notes.")
  ScoreLimits limits = ScoreLimits.DEFAULT;

  static final class LimitsConverter implements ITypeConverter<ScoreLimits> {
    @Override
    public ScoreLimits convert(String text) {
      return ScoreOptions.converted(() -> ScoreLimits.DEFAULT.with(text));
    }
  }
}
