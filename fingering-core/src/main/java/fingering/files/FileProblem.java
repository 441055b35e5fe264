package fingering.files;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Sentences about files that cannot be read or written: what is wrong, where, and what to do. They
 * never repeat the words of Java, whose messages are often no more than the name of the file.
 */
public final class FileProblem {
  private FileProblem() {}

  /** One sentence about a file or folder that cannot be read. */
  public static String reading(Path file, IOException cause) {
    if (cause instanceof AccessDeniedException) {
      return "You are not allowed to read %s: change its permissions, or use a copy."
          .formatted(file);
    }
    if (says(cause, "symbolic link")) {
      return loop(file);
    }
    if (cause instanceof NoSuchFileException || says(cause, "not a directory", "name too long")) {
      return "There is no file %s: check the name and the folder.".formatted(file);
    }
    return "%s could not be read from its disk: copy it elsewhere and try again.".formatted(file);
  }

  /** One sentence about a file or folder that cannot be made or written. */
  public static String writing(Path target, IOException cause) {
    Path folder = target.toAbsolutePath().getParent();
    if (folder != null && !Files.isDirectory(folder)) {
      return noFolder(target, folder);
    }
    if (cause instanceof AccessDeniedException) {
      return "You are not allowed to write %s: choose another folder.".formatted(target);
    }
    if (says(cause, "symbolic link")) {
      return loop(target);
    }
    if (says(cause, "read-only")) {
      return "%s could not be written because its disk is read-only: choose another folder."
          .formatted(target);
    }
    if (full(cause)) {
      return "%s could not be written because the disk is full: make room, or choose another folder."
          .formatted(target);
    }
    if (says(cause, "name too long")) {
      return "%s could not be written because its name is too long: choose a shorter one."
          .formatted(target);
    }
    return "%s could not be written: check that the disk is not full, or choose another folder."
        .formatted(target);
  }

  private static String loop(Path file) {
    return "%s is a link that leads back to itself: name the file itself.".formatted(file);
  }

  /** One sentence about a file whose folder does not exist. */
  public static String noFolder(Path target, Path folder) {
    return "%s cannot be written because there is no folder %s: make it first, or choose another."
        .formatted(target, folder);
  }

  /** One sentence about output that could not be printed. */
  public static String printing(IOException cause) {
    return full(cause)
        ? "The output is cut off because the disk is full: make room, and run the command again."
        : "The output could not be printed: check the file or device that it goes to.";
  }

  /** Whether nothing was lost: the program that reads the output has read as much as it wanted. */
  public static boolean readerHasEnded(IOException cause) {
    return says(cause, "pipe");
  }

  private static boolean full(IOException cause) {
    return says(cause, "no space left", "not enough space", "quota");
  }

  /** Whether the operating system gives one of these reasons. Java does not keep its number. */
  private static boolean says(IOException cause, String... reasons) {
    String reason =
        String.valueOf(
                cause instanceof FileSystemException failure
                    ? failure.getReason()
                    : cause.getMessage())
            .toLowerCase(Locale.ROOT);
    return Stream.of(reasons).anyMatch(reason::contains);
  }
}
