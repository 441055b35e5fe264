package fingering.web;

import com.google.common.io.MoreFiles;
import com.google.common.io.RecursiveDeleteOption;
import fingering.files.FileProblem;
import fingering.tables.FingeringException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Files that were dropped on the page, in a folder that only its owner reads and that is deleted at
 * the end. The names of the files on disk are our own, whatever the sender calls them.
 */
final class DroppedFiles implements AutoCloseable {
  private static final int LONGEST_NAME = 120;

  private final Path folder;
  private final Secrets secrets;

  private DroppedFiles(Path folder, Secrets secrets) {
    this.folder = folder;
    this.secrets = secrets;
  }

  /**
   * A file that was dropped.
   *
   * @param id its id
   * @param path where it is kept
   * @param name its name, to be shown
   */
  record Dropped(String id, Path path, String name) {}

  /**
   * Makes the folder.
   *
   * @throws IOException if that is not possible
   */
  static DroppedFiles create(Secrets secrets) throws IOException {
    return new DroppedFiles(Files.createTempDirectory("fingering"), secrets);
  }

  /**
   * Keeps a file.
   *
   * @param sent its name as sent, which may be anything
   * @throws FingeringException if it cannot be written
   */
  Dropped keep(String sent, byte[] content) {
    String id = secrets.fresh();
    String shown = shown(sent);
    String ending = shown.substring(shown.lastIndexOf('.')).toLowerCase(Locale.ROOT);
    Path path = folder.resolve("s" + id + ending);
    try {
      Files.write(path, content);
    } catch (IOException e) {
      throw new FingeringException(FileProblem.writing(path, e), e);
    }
    return new Dropped(id, path, shown);
  }

  /** The last part of a name, without signs that nobody sees. */
  private static String shown(String sent) {
    String name =
        sent.substring(1 + Math.max(sent.lastIndexOf('/'), sent.lastIndexOf('\\')))
            .replaceAll("\\p{C}", "");
    return name.substring(Math.max(0, name.length() - LONGEST_NAME));
  }

  @Override
  public void close() throws IOException {
    MoreFiles.deleteRecursively(folder, RecursiveDeleteOption.ALLOW_INSECURE);
  }
}
