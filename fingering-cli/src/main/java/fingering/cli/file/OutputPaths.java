package fingering.cli.file;

import fingering.musicxml.UnwritableScoreException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Checks of the names of new files, and the errors about them. */
public final class OutputPaths {
  private OutputPaths() {}

  /**
   * Checks that a file can be made: it does not exist, and its folder does.
   *
   * @param option the option that names the file, for the message
   * @throws UnwritableScoreException if it cannot be made
   */
  public static void requireNew(Path file, String option) {
    if (Files.exists(file)) {
      throw existing(file, option);
    }
    Path folder = file.toAbsolutePath().getParent();
    if (folder != null && !Files.isDirectory(folder)) {
      throw new UnwritableScoreException(
          "%s cannot be written because there is no folder %s: make it first, or choose another."
              .formatted(file, folder));
    }
  }

  static UnwritableScoreException existing(Path file, String option) {
    return new UnwritableScoreException(file + " exists already; give " + option + " a new name.");
  }

  static UnwritableScoreException unwritable(Path file, IOException e) {
    return new UnwritableScoreException(
        file + " cannot be written; check the folder, its permissions and the space on its disk.",
        e);
  }
}
