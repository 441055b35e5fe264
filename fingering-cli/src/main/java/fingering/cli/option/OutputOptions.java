package fingering.cli.option;

import fingering.cli.file.OutputFile;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Where and how to print plans. */
public final class OutputOptions extends OutputFile {
  /** Forms in which plans are printed. */
  public enum Format {
    TEXT,
    JSON,
    HTML,
    SVG;

    /** Whether the music is drawn. */
    public boolean drawn() {
      return this == HTML || this == SVG;
    }
  }

  @Option(
      names = "--format",
      paramLabel = "FORM",
      description =
          "text (the default), json, html (a page with the music), or svg (the music alone); told by the ending of --output too.")
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
