package fingering.cli.file;

import java.nio.file.Path;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/**
 * Tells which files are there now. It stands among the messages and below all that is printed, so
 * that what is led into a file or another program stays as it is, and a reader sees it last.
 */
public final class WrittenFiles {
  private WrittenFiles() {}

  /** Tells of one file, or one folder. */
  public static void tell(CommandSpec spec, Path file) {
    CommandLine line = spec.commandLine();
    line.getOut().flush();
    line.getErr().println("Written: " + file);
  }
}
