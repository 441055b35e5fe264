package fingering.userfile;

import fingering.files.FileProblem;
import fingering.tables.FingeringException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;

/** Reads small text files, in UTF-8 with or without a byte order mark. */
public final class SmallFile {
  /** The largest user file, in KiB: far more than one needs. */
  public static final int MAX_KIB = 64;

  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private SmallFile() {}

  /**
   * The text of a file of at most 64 KiB.
   *
   * @param what the expected kind of file, with its article: a player file
   * @throws FingeringException if the file cannot be read or is too large; the message is one
   *     sentence
   */
  public static String text(Path file, String what) {
    return text(file, what, MAX_KIB);
  }

  /**
   * The text of a file.
   *
   * @param what the expected kind of file, with its article: a player file
   * @param maxKib the largest size, in KiB
   * @throws FingeringException if the file cannot be read or is too large; the message is one
   *     sentence
   */
  public static String text(Path file, String what, int maxKib) {
    try {
      return decoded(bytes(file, what, maxKib), StandardCharsets.UTF_8);
    } catch (CharacterCodingException e) {
      throw new FingeringException(
          "%s is not text in UTF-8: save it again in that encoding.".formatted(file), e);
    }
  }

  /**
   * A text and its encoding.
   *
   * @param content the text, without byte order mark
   * @param encoding the encoding that it was read in
   */
  public record Encoded(String content, Charset encoding) {}

  /**
   * The text of a file in UTF-8, in UTF-16 with a byte order mark, or else in Latin-1, as in older
   * programs.
   *
   * @param what the expected kind of file, with its article: a file of tunes
   * @param maxKib the largest size, in KiB
   * @throws FingeringException if the file cannot be read or is too large; the message is one
   *     sentence
   */
  public static Encoded textInAnyEncoding(Path file, String what, int maxKib) {
    byte[] bytes = bytes(file, what, maxKib);
    boolean wide =
        bytes.length > 1
            && ((bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF)
                || (bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE));
    Charset encoding = wide ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8;
    try {
      return new Encoded(decoded(bytes, encoding), encoding);
    } catch (CharacterCodingException e) {
      // Latin-1 gives every byte a character.
      return new Encoded(
          new String(bytes, StandardCharsets.ISO_8859_1), StandardCharsets.ISO_8859_1);
    }
  }

  private static String decoded(byte[] bytes, Charset encoding) throws CharacterCodingException {
    String text = encoding.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
  }

  private static byte[] bytes(Path file, String what, int maxKib) {
    try {
      BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
      if (attributes.isDirectory()) {
        throw new FingeringException("%s is a folder: name %s inside it.".formatted(file, what));
      }
      if (!attributes.isRegularFile()) {
        throw new FingeringException(
            "%s is a device and not a file: save the text in a file first.".formatted(file));
      }
      if (attributes.size() > maxKib * 1024L) {
        throw new FingeringException(
            "%s is larger than %d KiB and is not read: check that it is %s."
                .formatted(file, maxKib, what));
      }
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new FingeringException(FileProblem.reading(file, e), e);
    }
  }
}
