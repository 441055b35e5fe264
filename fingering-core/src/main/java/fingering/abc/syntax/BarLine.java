package fingering.abc.syntax;

import java.util.Optional;

/**
 * A bar line (ABC 2.1, section 'Repeat/bar symbols').
 *
 * @param style the MusicXML name of its style
 * @param ends number of times that the music before it is repeated; 0 for no repeat
 * @param begins whether a repeat begins after it
 */
public record BarLine(String style, int ends, boolean begins) {
  private static final String LIGHT = "regular";

  /** Returns whether a bar line comes next. */
  public static boolean isNext(LineCursor cursor) {
    char next = cursor.peek(1);
    return switch (cursor.peek()) {
      case '|', ':' -> true;
      case '[' -> next == '|';
      case '.' -> next == '|';
      default -> false;
    };
  }

  /**
   * Reads the next bar line.
   *
   * @throws AbcException if it is not valid
   */
  public static BarLine read(LineCursor cursor) {
    LineCursor start = cursor.copy();
    boolean dotted = cursor.take('.');
    int ends = colons(cursor);
    String lines = lines(cursor);
    int begins = colons(cursor);
    if (lines.isEmpty() && begins == 0) {
      // "::" ends one repeat and begins another.
      begins = ends / 2;
      ends -= begins;
    }
    boolean valid = lines.isEmpty() ? ends > 0 && ends == begins : cursor.peek() != '|';
    if (!valid) {
      throw start.error(
          "this is not a bar line: write one of | || |] [| |: :| :: and, for endings, [1 and [2.");
    }
    return new BarLine(style(lines, dotted, ends, begins), ends, begins > 0);
  }

  private static int colons(LineCursor cursor) {
    return cursor.takeWhile(c -> c == ':').length();
  }

  private static String lines(LineCursor cursor) {
    StringBuilder lines = new StringBuilder();
    while (cursor.peek() == '|'
        || (cursor.peek() == '[' && cursor.peek(1) == '|')
        || (cursor.peek() == ']' && !lines.isEmpty())) {
      lines.append(cursor.next());
    }
    return lines.toString();
  }

  private static String style(String lines, boolean dotted, int ends, int begins) {
    if (ends > 0) {
      return "light-heavy";
    }
    if (dotted) {
      return "dotted";
    }
    return switch (lines) {
      // The next measure prints the repeat that begins there.
      case "|" -> LIGHT;
      case "[|]" -> "none";
      default ->
          lines.endsWith("]")
              ? "light-heavy"
              : lines.startsWith("[") ? "heavy-light" : begins > 0 ? LIGHT : "light-light";
    };
  }

  /** Returns whether it is a plain single bar line. */
  public boolean plain() {
    return style.equals(LIGHT) && ends == 0 && !begins;
  }

  /** Returns whether it closes an ending of a repeat. */
  public boolean endsEnding() {
    return ends > 0 || style.contains("heavy") || style.equals("light-light");
  }

  /** Returns this bar line combined with another that follows it immediately. */
  public BarLine and(BarLine next) {
    String both = style.equals(LIGHT) ? next.style : style;
    return new BarLine(
        next.ends > 0 ? next.style : both, Math.max(ends, next.ends), begins || next.begins);
  }

  /**
   * Reads the numbers of an ending if they come next: {@code [1}, or {@code 1} after a bar line.
   *
   * @param afterBar whether a bar line was just read
   * @throws AbcException if the numbers are not valid
   */
  public static Optional<String> ending(LineCursor cursor, boolean afterBar) {
    LineCursor start = cursor.copy();
    boolean bracket = cursor.peek() == '[' && LineCursor.isDigit(cursor.peek(1));
    if (!bracket && !(afterBar && cursor.atNumber())) {
      return Optional.empty();
    }
    cursor.take('[');
    StringBuilder numbers = new StringBuilder();
    do {
      int from = cursor.number();
      int to = cursor.take('-') ? cursor.number() : from;
      if (from < 1 || to < from || to - from > 99) {
        throw start.error("endings are numbered from 1: write [1, [2 or [1,3.");
      }
      for (int number = from; number <= to; number++) {
        numbers.append(numbers.isEmpty() ? "" : ",").append(number);
      }
    } while (cursor.take(','));
    return Optional.of(numbers.toString());
  }
}
