package fingering.cli.option;

import fingering.cli.file.OutputFile;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Where and how to print the practice of a plan. */
public final class PracticeOutput extends OutputFile {
  /** Forms in which it is printed. */
  public enum Format {
    TEXT,
    HTML
  }

  @Option(
      names = "--format",
      paramLabel = "FORM",
      description =
          "text (the default) or html, a page to print, with the journal as a picture; told by the ending of --output too.")
  Optional<Format> format = Optional.empty();

  /** The form that was asked for, or the one that the name of the file tells. */
  public Format format() {
    return format.or(() -> named(Format.class)).orElse(Format.TEXT);
  }

  @Override
  public boolean words() {
    return format() == Format.TEXT;
  }
}
