package fingering.cli.option;

import fingering.cli.file.OutputFile;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Where and how to print a chart. */
public final class ChartOutput extends OutputFile {
  /** Forms in which charts are drawn. */
  public enum Format {
    TEXT,
    SVG
  }

  @Option(
      names = "--format",
      paramLabel = "FORM",
      description = "text (the default) or svg, a picture; told by the ending of --output too.")
  Optional<Format> format = Optional.empty();

  /** The form asked for: a file that is called a picture becomes one. */
  public Format format() {
    return format.or(() -> named(Format.class)).orElse(Format.TEXT);
  }

  @Override
  public boolean words() {
    return format() == Format.TEXT;
  }
}
