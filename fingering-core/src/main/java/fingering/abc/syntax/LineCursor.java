package fingering.abc.syntax;

import java.util.function.IntPredicate;

/** Reads a line from left to right. Not thread-safe. */
public final class LineCursor {
  /** The character after the end of a line. */
  public static final char NOTHING = '\0';

  /** The largest number that is read. */
  public static final int LARGEST = 9999;

  private static final int MOST_DIGITS = 4;

  private final SourceLine line;
  private int at;

  /**
   * Starts at a position.
   *
   * @param at index from 0
   */
  public LineCursor(SourceLine line, int at) {
    this.line = line;
    this.at = Math.min(at, line.text().length());
  }

  /** Returns the line. */
  public SourceLine line() {
    return line;
  }

  /** Returns the position, an index from 0. */
  public int at() {
    return at;
  }

  /** Returns whether the cursor is at the end of the line. */
  public boolean done() {
    return at >= line.text().length();
  }

  /** Returns the next character, {@link #NOTHING} at the end. */
  public char peek() {
    return peek(0);
  }

  /** Returns the character at a distance from the cursor, {@link #NOTHING} after the end. */
  public char peek(int ahead) {
    int index = at + ahead;
    return index < line.text().length() ? line.text().charAt(index) : NOTHING;
  }

  /** Reads the next character, {@link #NOTHING} at the end. */
  public char next() {
    char next = peek();
    at = Math.min(at + 1, line.text().length());
    return next;
  }

  /** Reads the character if it comes next; returns whether it did. */
  public boolean take(char wanted) {
    if (peek() != wanted || done()) {
      return false;
    }
    at++;
    return true;
  }

  /** Reads all next characters of a kind. */
  public String takeWhile(IntPredicate kind) {
    int from = at;
    while (!done() && kind.test(peek())) {
      at++;
    }
    return line.text().substring(from, at);
  }

  /** Reads blanks and tabs; returns whether there were any. */
  public boolean takeBlanks() {
    return !takeWhile(c -> c == ' ' || c == '\t').isEmpty();
  }

  /** Reads the rest of the line, without blanks at both ends. */
  public String rest() {
    String rest = line.text().substring(at).strip();
    at = line.text().length();
    return rest;
  }

  /**
   * Reads to a character, and past it. Returns the text before it; the rest of the line if the
   * character is missing.
   */
  public String upTo(char end) {
    String text = takeWhile(c -> c != end);
    take(end);
    return text;
  }

  /** Reads to an index. Returns the text before it. */
  public String to(int index) {
    String text = line.text().substring(at, Math.max(at, index));
    at = Math.max(at, index);
    return text;
  }

  /** Returns whether a number comes next. */
  public boolean atNumber() {
    return isDigit(peek());
  }

  /**
   * Reads a whole number, 0 if none comes next. Larger numbers are read as {@link #LARGEST}, which
   * is out of range for everything.
   */
  public int number() {
    String digits = takeWhile(LineCursor::isDigit).replaceFirst("^0+", "");
    if (digits.isEmpty()) {
      return 0;
    }
    return digits.length() > MOST_DIGITS ? LARGEST : Integer.parseInt(digits);
  }

  /** Returns whether a character is a digit from 0 to 9. */
  public static boolean isDigit(int c) {
    return c >= '0' && c <= '9';
  }

  /** Returns whether a character is a letter from A to Z, in either case. */
  public static boolean isLetter(int c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
  }

  /** Returns a new cursor at the same position. */
  public LineCursor copy() {
    return back(0);
  }

  /** Returns a new cursor at an earlier position. */
  public LineCursor back(int places) {
    return new LineCursor(line, at - places);
  }

  /**
   * Returns the exception for text that cannot be read at this position.
   *
   * @param what what is wrong and what to write instead, with full stop
   */
  public AbcException error(String what) {
    return line.error(at, what);
  }
}
