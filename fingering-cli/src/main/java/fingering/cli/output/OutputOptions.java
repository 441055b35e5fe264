package fingering.cli.output;

import fingering.cli.file.FileForm;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Where to print plans, and in which format. */
public final class OutputOptions extends OutputFile {
  /** The formats. */
  public enum Format {
    TEXT,
    JSON,
    HTML,
    SVG;

    /** Whether the format draws the music. */
    public boolean drawn() {
      return this == HTML || this == SVG;
    }
  }

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description =
          "text, json, html (a page with the music) or svg (the music alone). Default: from the ending of the --output name, or text.")
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
