package fingering.cli;

import picocli.CommandLine.Option;

/** Where and how to print plans. */
final class OutputOptions extends OutputFile {
  /** Forms in which plans are printed. */
  enum Format {
    TEXT,
    JSON
  }

  @Option(names = "--format", paramLabel = "FORM", description = "text (the default) or json.")
  Format format = Format.TEXT;
}
