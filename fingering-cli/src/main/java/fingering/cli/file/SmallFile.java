package fingering.cli.file;

import fingering.musicxml.SelectionException;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads the small text files that a user writes: a tuning, weights. */
public final class SmallFile {
  /** Far more than a tuning or weights take. */
  private static final int MAX_KIB = 64;

  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private SmallFile() {}

  /**
   * The text of a file.
   *
   * @param what what it should hold, with its article: a tuning
   * @throws SelectionException if it cannot be read, or is too large to be what it should
   */
  public static String text(Path file, String what) {
    return text(file, what, MAX_KIB);
  }

  /**
   * The text of a file of at most so many kibibytes.
   *
   * @throws SelectionException as above
   */
  public static String text(Path file, String what, int mostKib) {
    try {
      if (!Files.exists(file)) {
        throw new SelectionException(
            "There is no file %s: check its name and folder.".formatted(file));
      }
      if (Files.isDirectory(file)) {
        throw new SelectionException(
            "%s is a folder: name the file of %s inside it.".formatted(file, what));
      }
      if (!Files.isRegularFile(file)) {
        throw new SelectionException(
            "%s is a device and no file: save %s to a file first.".formatted(file, what));
      }
      if (Files.size(file) > mostKib * 1024L) {
        throw new SelectionException(
            "%s is larger than %d KiB and is not read: check that it holds %s and no score."
                .formatted(file, mostKib, what));
      }
      String text = Files.readString(file);
      return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw new SelectionException(
          "%s is not text in UTF-8: save it again in that encoding.".formatted(file));
    } catch (AccessDeniedException e) {
      throw new SelectionException(
          "You are not allowed to read %s: change its permissions, or use a copy.".formatted(file));
    } catch (IOException e) {
      throw new SelectionException(
          "%s could not be read from its disk: copy it elsewhere and try again.".formatted(file));
    }
  }
}
