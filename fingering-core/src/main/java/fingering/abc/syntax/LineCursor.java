package fingering.abc.syntax;

import java.util.function.IntPredicate;

/** Goes along a line from left to right. */
public final class LineCursor {
  /** What stands behind the end of a line. */
  public static final char NOTHING = '\0';

  private static final int MOST_DIGITS = 4;

  private final SourceLine line;
  private int at;

  public LineCursor(SourceLine line, int at) {
    this.line = line;
    this.at = Math.min(at, line.text().length());
  }

  /** The line. */
  public SourceLine line() {
    return line;
  }

  /** The place, an index from 0. */
  public int at() {
    return at;
  }

  /** Whether the end is reached. */
  public boolean done() {
    return at >= line.text().length();
  }

  /** The next character, {@link #NOTHING} at the end. */
  public char peek() {
    return peek(0);
  }

  /** The character so many places on, {@link #NOTHING} behind the end. */
  public char peek(int ahead) {
    int index = at + ahead;
    return index < line.text().length() ? line.text().charAt(index) : NOTHING;
  }

  /** Takes the next character, {@link #NOTHING} at the end. */
  public char next() {
    char next = peek();
    at = Math.min(at + 1, line.text().length());
    return next;
  }

  /** Takes the character if it comes next. */
  public boolean take(char wanted) {
    if (peek() != wanted || done()) {
      return false;
    }
    at++;
    return true;
  }

  /** Takes all characters of a kind that come next. */
  public String takeWhile(IntPredicate kind) {
    int from = at;
    while (!done() && kind.test(peek())) {
      at++;
    }
    return line.text().substring(from, at);
  }

  /** Takes blanks and tabs; tells whether there were some. */
  public boolean takeBlanks() {
    return !takeWhile(c -> c == ' ' || c == '\t').isEmpty();
  }

  /** Takes what is left, without blanks at its ends. */
  public String rest() {
    String rest = line.text().substring(at).strip();
    at = line.text().length();
    return rest;
  }

  /**
   * Takes everything up to a character, and that too.
   *
   * @param what what the character ends, for the message where it is missing
   * @param start where that begins
   */
  public String upTo(char end, String what, LineCursor start) {
    int close = line.text().indexOf(end, at);
    if (close < 0) {
      throw start.wrong("%s that begins here has no end: put %s behind it.".formatted(what, end));
    }
    String taken = line.text().substring(at, close);
    at = close + 1;
    return taken;
  }

  /** Whether a number comes next. */
  public boolean atNumber() {
    return isDigit(peek());
  }

  /** Takes a whole number of four digits at most. */
  public int number() {
    LineCursor start = back(0);
    String digits = takeWhile(LineCursor::isDigit);
    if (digits.isEmpty()) {
      throw wrong("a number belongs here: write one.");
    }
    if (digits.length() > MOST_DIGITS) {
      throw start.wrong(
          "the number %s is out of all range: write one of four digits at most.".formatted(digits));
    }
    return Integer.parseInt(digits);
  }

  public static boolean isDigit(int c) {
    return c >= '0' && c <= '9';
  }

  public static boolean isLetter(int c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
  }

  /** A cursor that many places before this one. */
  public LineCursor back(int places) {
    return new LineCursor(line, at - places);
  }

  /** What to throw where what comes next cannot be read. */
  public AbcException wrong(String what) {
    return line.wrong(at, what);
  }
}
