package fingering.cli.file;

import java.nio.file.Path;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/**
 * Names the files that were written. The lines go to the error stream, after all output: redirected
 * output stays unchanged, and the reader sees them last.
 */
public final class WrittenFiles {
  private WrittenFiles() {}

  /** Names one file or folder. */
  public static void report(CommandSpec command, Path file) {
    CommandLine line = command.commandLine();
    line.getOut().flush();
    line.getErr().println("Written: " + file);
  }
}
