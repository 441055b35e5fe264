package fingering.cli.output;

import fingering.cli.file.FileForm;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Where to print a practice plan or what to circle, and in which format. */
public final class PracticeOutput extends OutputFile {
  /** The formats. */
  public enum Format {
    TEXT,
    HTML
  }

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description =
          "text or html (a page to print). Default: from the ending of the --output name, or text.")
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
