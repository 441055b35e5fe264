package fingering.cli.output;

import fingering.cli.file.FileForm;
import fingering.page.view.Paper;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Where to print a handout, and on which paper. It is always a page. */
public final class HandoutOutput extends OutputFile {
  /** The formats. */
  enum Format {
    HTML
  }

  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      description = "The size of the paper: a4 (the default) or letter.")
  Paper paper = Paper.A4;

  /** The size of the paper. */
  public Paper paper() {
    return paper;
  }

  @Override
  protected FileForm form() {
    form(Optional.empty(), Format.class);
    return FileForm.HTML;
  }
}
