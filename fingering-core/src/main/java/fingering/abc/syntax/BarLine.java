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
      case '[' -> next == '|' || next == ':';
      case '.' -> next == '|';
      default -> false;
    };
  }

  /**
   * Reads the next bar line. Bar lines may have any shape; the standard asks programs to be
   * liberal. Empty, with a remark, for a single colon.
   */
  public static Optional<BarLine> read(LineCursor cursor, Repairs repairs) {
    LineCursor start = cursor.copy();
    boolean dotted = cursor.take('.');
    String signs = signs(cursor);
    String lines = signs.replaceAll("^:+|:+$", "");
    int ends = leadingColons(signs);
    int begins = lines.isEmpty() ? 0 : leadingColons(new StringBuilder(signs).reverse().toString());
    if (lines.isEmpty()) {
      if (ends == 1) {
        repairs.add(start, "':' is not a bar line; it was left out");
        return Optional.empty();
      }
      // "::" ends one repeat and begins another.
      begins = ends / 2;
      ends -= begins;
    }
    if (lines.contains(":")) {
      repairs.add(start, "'%s' is an unusual bar line; it was read as :|".formatted(signs));
      ends = Math.max(1, ends);
    }
    return Optional.of(
        new BarLine(style(lines.replace(":", ""), dotted, ends, begins), ends, begins > 0));
  }

  private static int leadingColons(String signs) {
    return signs.length() - signs.replaceFirst("^:+", "").length();
  }

  private static String signs(LineCursor cursor) {
    StringBuilder signs = new StringBuilder();
    while (cursor.peek() == '|'
        || cursor.peek() == ':'
        || (cursor.peek() == '[' && (cursor.peek(1) == '|' || cursor.peek(1) == ':'))
        || (cursor.peek() == ']' && signs.indexOf("|") >= 0)) {
      signs.append(cursor.next());
    }
    return signs.toString();
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
   * Numbers that are not valid are left out.
   *
   * @param afterBar whether a bar line was just read
   */
  public static Optional<String> ending(LineCursor cursor, boolean afterBar, Repairs repairs) {
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
        repairs.add(start, "endings are numbered from 1, as in [1, [2 or [1,3; this was left out");
        continue;
      }
      for (int number = from; number <= to; number++) {
        numbers.append(numbers.isEmpty() ? "" : ",").append(number);
      }
    } while (LineCursor.isDigit(cursor.peek(1)) && cursor.take(','));
    return Optional.of(numbers.toString()).filter(all -> !all.isEmpty());
  }
}
