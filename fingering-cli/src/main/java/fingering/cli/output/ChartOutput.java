package fingering.cli.output;

import fingering.cli.file.FileForm;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Where to print a chart or a journal, and in which format. */
public final class ChartOutput extends OutputFile {
  /** The formats. */
  public enum Format {
    TEXT,
    SVG
  }

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description =
          "text or svg (a picture). Default: from the ending of the --output name, or text.")
  Optional<Format> format = Optional.empty();

  /** The format to print. */
  public Format format() {
    return Format.valueOf(form().name());
  }

  @Override
  protected FileForm form() {
    return form(format, Format.class);
  }
}
