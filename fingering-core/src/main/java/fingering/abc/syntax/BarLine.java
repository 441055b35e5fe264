package fingering.abc.syntax;

import java.util.Optional;

/**
 * A bar line (ABC 2.1, section 'Repeat/bar symbols').
 *
 * @param style its style as MusicXML names it
 * @param ends how many times what stands before it is repeated; 0 for no repeat
 * @param begins whether a repeat begins behind it
 */
public record BarLine(String style, int ends, boolean begins) {
  private static final String LIGHT = "regular";

  /** Whether a bar line comes next. */
  public static boolean comes(LineCursor cursor) {
    char next = cursor.peek(1);
    return switch (cursor.peek()) {
      case '|', ':' -> true;
      case '[' -> next == '|';
      case '.' -> next == '|';
      default -> false;
    };
  }

  /** Reads the bar line that comes next. */
  public static BarLine read(LineCursor cursor) {
    LineCursor start = cursor.back(0);
    boolean dotted = cursor.take('.');
    int ends = colons(cursor);
    String lines = lines(cursor);
    int begins = colons(cursor);
    if (lines.isEmpty() && begins == 0) {
      // "::" ends one repeat and begins another.
      begins = ends / 2;
      ends -= begins;
    }
    boolean sane = lines.isEmpty() ? ends > 0 && ends == begins : cursor.peek() != '|';
    if (!sane) {
      throw start.wrong(
          "this is no bar line: write one of | || |] [| |: :| :: and, for endings, [1 and [2.");
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
      // The next measure prints the sign of the repeat that begins there.
      case "|" -> LIGHT;
      case "[|]" -> "none";
      default ->
          lines.endsWith("]")
              ? "light-heavy"
              : lines.startsWith("[") ? "heavy-light" : begins > 0 ? LIGHT : "light-light";
    };
  }

  /** Whether it is no more than a bar line. */
  public boolean plain() {
    return style.equals(LIGHT) && ends == 0 && !begins;
  }

  /** Whether an ending of a repeat ends with it. */
  public boolean endsEnding() {
    return ends > 0 || style.contains("heavy") || style.equals("light-light");
  }

  /** What this and another that follows it at once are together. */
  public BarLine and(BarLine next) {
    String both = style.equals(LIGHT) ? next.style : style;
    return new BarLine(
        next.ends > 0 ? next.style : both, Math.max(ends, next.ends), begins || next.begins);
  }

  /** The numbers of an ending, if they come next: {@code [1}, or {@code 1} behind a bar line. */
  public static Optional<String> ending(LineCursor cursor, boolean behindBar) {
    LineCursor start = cursor.back(0);
    boolean bracket = cursor.peek() == '[' && LineCursor.isDigit(cursor.peek(1));
    if (!bracket && !(behindBar && cursor.atNumber())) {
      return Optional.empty();
    }
    cursor.take('[');
    StringBuilder numbers = new StringBuilder();
    do {
      int from = cursor.number();
      int to = cursor.take('-') ? cursor.number() : from;
      if (from < 1 || to < from || to - from > 99) {
        throw start.wrong("an ending is numbered from 1 up: write [1, [2 or [1,3.");
      }
      for (int number = from; number <= to; number++) {
        numbers.append(numbers.isEmpty() ? "" : ",").append(number);
      }
    } while (cursor.take(','));
    return Optional.of(numbers.toString());
  }
}
