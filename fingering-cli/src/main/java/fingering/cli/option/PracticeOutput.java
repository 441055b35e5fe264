package fingering.cli.option;

import java.util.Optional;
import picocli.CommandLine.Option;

/** Where to print a practice plan, and in which format. */
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
          "text or html (a page to print, with your progress as a picture). Default: from the ending of the --output name, or text.")
  Optional<Format> format = Optional.empty();

  /** The format to print. */
  public Format format() {
    return format(format, Format.class, Format.TEXT);
  }

  @Override
  protected boolean isText() {
    return format() == Format.TEXT;
  }
}
