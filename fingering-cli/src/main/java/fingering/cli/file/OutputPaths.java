package fingering.cli.file;

import fingering.files.FileProblem;
import fingering.musicxml.UnwritableScoreException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Checks of the names of new files, and the errors about them. */
public final class OutputPaths {
  private OutputPaths() {}

  /**
   * Checks that a file can be made: it does not exist, or the program wrote it and nobody has
   * changed it since; and its folder exists.
   *
   * @param option the option that names the file, for the message
   * @throws UnwritableScoreException if it cannot be made
   */
  public static void requireNew(Path file, String option) {
    if (Files.exists(file) && !OwnFiles.isUnchangedPage(file)) {
      throw existing(file, option);
    }
    Path folder = file.toAbsolutePath().getParent();
    if (folder != null && !Files.isDirectory(folder)) {
      throw new UnwritableScoreException(FileProblem.noFolder(file, folder));
    }
  }

  static UnwritableScoreException existing(Path file, String option) {
    return new UnwritableScoreException(file + " exists already; give " + option + " a new name.");
  }

  static UnwritableScoreException unwritable(Path file, IOException e) {
    return new UnwritableScoreException(FileProblem.writing(file, e), e);
  }
}
