package fingering.web.folder;

import java.io.IOException;
import java.nio.file.Path;

/** Whether files are in a folder wherever links lead. */
public final class Inside {
  private Inside() {}

  /** Whether a file is in a folder; false if one of them does not exist. */
  public static boolean folder(Path folder, Path file) {
    try {
      return file.toRealPath().startsWith(folder.toRealPath());
    } catch (IOException e) {
      return false;
    }
  }
}
