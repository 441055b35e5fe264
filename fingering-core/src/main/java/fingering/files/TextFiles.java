package fingering.files;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;

/**
 * Writes texts beside their file and moves them into place, so that the file holds the old text or
 * the new one, whenever the program ends.
 */
public final class TextFiles {
  private TextFiles() {}

  /** A new name in the folder of a file, for what is moved into its place later. */
  public static Path temporarySibling(Path target) {
    Path temporary = target.resolveSibling("." + UUID.randomUUID() + ".part");
    if (temporary.getFileSystem().equals(FileSystems.getDefault())) {
      temporary.toFile().deleteOnExit();
    }
    return temporary;
  }

  /**
   * Writes a new file.
   *
   * @param target an absolute path
   * @throws FileAlreadyExistsException if there is a file of this name
   * @throws IOException if it cannot be written
   */
  public static void create(Path target, String text) throws IOException {
    Path part = temporarySibling(target);
    try {
      Files.writeString(part, text, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
      // Fails if another program has created the file in the meantime.
      Files.move(part, target);
    } finally {
      Files.deleteIfExists(part);
    }
  }

  /**
   * Writes a text in place of that of a file. A link to the file stays a link.
   *
   * @throws IOException if it cannot be written; the file is then as it was
   */
  public static void replace(Path file, String text) throws IOException {
    Path target = file.toRealPath();
    Path part = temporarySibling(target);
    try {
      Files.writeString(part, text, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
      keepPermissions(target, part);
      try {
        Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
      } catch (AtomicMoveNotSupportedException e) {
        Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
      }
    } finally {
      Files.deleteIfExists(part);
    }
  }

  /** A file that only its owner reads stays so. */
  private static void keepPermissions(Path from, Path to) throws IOException {
    if (Files.getFileStore(from).supportsFileAttributeView("posix")) {
      Files.setPosixFilePermissions(to, Files.getPosixFilePermissions(from));
    }
  }

  /**
   * Keeps the text before the first change of a day, beside its file: {@code
   * mill.yaml.2026-12-12~}.
   *
   * @return the copy; empty if there is one of this day
   * @throws IOException if it cannot be written
   */
  public static Optional<Path> keep(Path file, String text, LocalDate today) throws IOException {
    Path copy = file.resolveSibling(file.getFileName() + "." + today + "~");
    if (Files.exists(copy, LinkOption.NOFOLLOW_LINKS)) {
      return Optional.empty();
    }
    try {
      create(copy.toAbsolutePath(), text);
      return Optional.of(copy);
    } catch (FileAlreadyExistsException e) {
      return Optional.empty();
    }
  }
}
