package fingering.abc.syntax;

import java.util.function.IntPredicate;

/** Reads a line from left to right. Not thread-safe. */
public final class LineCursor {
  /** The character after the end of a line. */
  public static final char NOTHING = '\0';

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
   * Reads to a character, and past it. Returns the text before it.
   *
   * @param what the construct that the character ends, for the message if it is missing
   * @param start the position where it begins
   * @throws AbcException if the character is missing
   */
  public String upTo(char end, String what, LineCursor start) {
    int close = line.text().indexOf(end, at);
    if (close < 0) {
      throw start.error("%s that begins here has no end: write %s after it.".formatted(what, end));
    }
    String text = line.text().substring(at, close);
    at = close + 1;
    return text;
  }

  /** Returns whether a number comes next. */
  public boolean atNumber() {
    return isDigit(peek());
  }

  /**
   * Reads a whole number of at most four digits.
   *
   * @throws AbcException if there is no number, or it is longer
   */
  public int number() {
    LineCursor start = copy();
    String digits = takeWhile(LineCursor::isDigit);
    if (digits.isEmpty()) {
      throw error("a number is missing here: write one.");
    }
    if (digits.length() > MOST_DIGITS) {
      throw start.error(
          "the number %s is out of range: write at most four digits.".formatted(digits));
    }
    return Integer.parseInt(digits);
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
