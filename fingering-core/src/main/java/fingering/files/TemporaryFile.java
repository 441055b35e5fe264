package fingering.files;

import java.nio.file.FileSystems;
import java.nio.file.Path;
import java.util.UUID;

/** Files that are written beside another one and then moved into its place. */
public final class TemporaryFile {
  private TemporaryFile() {}

  /**
   * Returns a new name for a temporary file in the target's folder. The name is hidden, ends in
   * {@code .part}, and does not contain the target's own name, which may be as long as the disk
   * allows. Unlike a temporary file of the system, a file created under this name gets the usual
   * permissions. If the program is interrupted, Java deletes the file; for that it remembers the
   * name, some hundred bytes, until the program ends.
   */
  public static Path beside(Path target) {
    Path temporary = target.resolveSibling("." + UUID.randomUUID() + ".part");
    if (temporary.getFileSystem().equals(FileSystems.getDefault())) {
      temporary.toFile().deleteOnExit();
    }
    return temporary;
  }
}
