package fingering.userfile;

/** Characters of user files. */
public final class UserText {
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
