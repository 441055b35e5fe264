package fingering.cli;

import picocli.CommandLine.Option;

/** Where and how to print the practice of a plan. */
final class PracticeOutput extends OutputFile {
  /** Forms in which it is printed. */
  enum Format {
    TEXT,
    HTML
  }

  @Option(
      names = "--format",
      paramLabel = "FORM",
      description = "text (the default) or html, a page to print, with the journal as a picture.")
  Format format = Format.TEXT;

  @Override
  boolean words() {
    return format == Format.TEXT;
  }
}
