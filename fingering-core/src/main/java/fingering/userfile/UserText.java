package fingering.userfile;

import java.util.regex.Pattern;

/** Characters and values of user files. */
public final class UserText {
  /** Texts that need no quotes, on a line of their own and in lists. */
  private static final Pattern PLAIN =
      Pattern.compile(
          "(?:\\.{1,2}/)*[\\p{L}\\p{N}](?:[\\p{L}\\p{N} ._/=@½()+-]*[\\p{L}\\p{N}._/=@½()+-])?");

  /** A word that YAML reads as no value. */
  private static final String NOTHING = "null";

  private UserText() {}

  /** Whether YAML allows the character: it is printable, a tab or a line end. */
  static boolean allowed(int character) {
    return character == '\t'
        || character == '\n'
        || character == '\r'
        || character == 0x85
        || (character >= ' ' && character <= '~')
        || (character >= 0xA0 && character <= 0xD7FF)
        || (character >= 0xE000 && character <= 0xFFFD)
        || character >= 0x1_0000;
  }

  /** Whether a text is a value that a user file can hold: one line, not blank, of printed signs. */
  public static boolean isValue(String text) {
    return !text.isBlank()
        && text.codePoints().allMatch(character -> allowed(character) && !endsLine(character));
  }

  /** A text as a value of YAML, in quotes if it needs them. */
  public static String value(String text) {
    if (PLAIN.matcher(text).matches() && !text.equalsIgnoreCase(NOTHING)) {
      return text;
    }
    StringBuilder quoted = new StringBuilder("\"");
    text.codePoints().forEach(character -> append(quoted, character));
    return quoted.append('"').toString();
  }

  private static void append(StringBuilder text, int character) {
    if (character == '"' || character == '\\') {
      text.append('\\').appendCodePoint(character);
    } else if ((character >= ' ' && character <= '~') || Character.isLetterOrDigit(character)) {
      text.appendCodePoint(character);
    } else {
      text.append(
          character <= 0xFFFF ? "\\u%04X".formatted(character) : "\\U%08X".formatted(character));
    }
  }

  /**
   * A comment of one line. Line ends, and characters that YAML does not allow, become question
   * marks.
   */
  public static String comment(String words) {
    StringBuilder line = new StringBuilder("# ");
    words
        .codePoints()
        .map(character -> endsLine(character) || !allowed(character) ? '?' : character)
        .forEach(line::appendCodePoint);
    return line.append('\n').toString();
  }

  private static boolean endsLine(int character) {
    return character == '\n'
        || character == '\r'
        || character == '\t'
        || character == 0x85
        || character == 0x2028
        || character == 0x2029;
  }
}
