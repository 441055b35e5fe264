package fingering.files;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;

/**
 * Writes texts beside their file and moves them into place, so that the file holds the old text or
 * the new one, whenever the program ends.
 */
public final class TextFiles {
  private static final String UNFINISHED = ".part";

  /** The names of unfinished files; no file of a user is called so. */
  private static final Pattern NAME =
      Pattern.compile("\\.[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}\\" + UNFINISHED);

  /** No program writes a file for so long: one that is older was left by a program that died. */
  private static final Duration STALE = Duration.ofDays(1);

  private TextFiles() {}

  /** A new name in the folder of a file, for what is moved into its place later. */
  public static Path temporarySibling(Path target) {
    Path temporary = target.resolveSibling("." + UUID.randomUUID() + UNFINISHED);
    if (temporary.getFileSystem().equals(FileSystems.getDefault())) {
      temporary.toFile().deleteOnExit();
    }
    return temporary;
  }

  /**
   * Deletes unfinished files that programs left in a folder because they were killed.
   *
   * @param written an unfinished file there that was written just now: those that are older than it
   *     by more than a day are deleted
   */
  public static void deleteStale(Path written) {
    Path folder = written.toAbsolutePath().resolveSibling("");
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, ".*" + UNFINISHED)) {
      Instant stale = Files.getLastModifiedTime(written).toInstant().minus(STALE);
      for (Path file : files) {
        if (NAME.matcher(file.getFileName().toString()).matches() && writtenBefore(stale, file)) {
          Files.deleteIfExists(file);
        }
      }
    } catch (IOException | DirectoryIteratorException e) {
      // What is left disturbs nobody.
      return;
    }
  }

  private static boolean writtenBefore(Instant time, Path file) throws IOException {
    BasicFileAttributes read =
        Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
    return read.isRegularFile() && read.lastModifiedTime().toInstant().isBefore(time);
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
      deleteStale(part);
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
      deleteStale(part);
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
