package fingering.cli;

import java.util.Optional;
import picocli.CommandLine.Option;

/** Where and how to print plans. */
final class OutputOptions extends OutputFile {
  /** Forms in which plans are printed. */
  enum Format {
    TEXT,
    JSON,
    HTML,
    SVG;

    /** Whether the music is drawn. */
    boolean drawn() {
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
  Format format() {
    return format.or(() -> named(Format.class)).orElse(Format.TEXT);
  }

  @Override
  boolean words() {
    return format() == Format.TEXT;
  }
}
