package fingering.abc.syntax;

import com.google.common.primitives.ImmutableIntArray;
import java.util.regex.Pattern;

/**
 * A line as typed, or a part of it.
 *
 * @param source the name of its file in messages
 * @param number its number in the file, from 1
 * @param text the line, without line end
 * @param columns the column in the file of each character, from 1; empty for a whole line
 */
public record SourceLine(String source, int number, String text, ImmutableIntArray columns) {
  // If a bar line or a repeat follows the letter, it is a note: "A:|". No field is named after a
  // small note.
  private static final Pattern FIELD = Pattern.compile("[A-Zh-z+]:(?![:|]).*", Pattern.DOTALL);
  private static final Pattern COMMENT = Pattern.compile("(?<!\\\\)%.*", Pattern.DOTALL);

  /** Creates a whole line. */
  public SourceLine(String source, int number, String text) {
    this(source, number, text, ImmutableIntArray.of());
  }

  /** Returns whether it is empty. */
  public boolean blank() {
    return text.isBlank();
  }

  /** Returns whether it is a comment or a stylesheet directive. */
  public boolean comment() {
    return text.stripLeading().startsWith("%");
  }

  /** Returns the line without a comment at its end. */
  public SourceLine code() {
    String code = COMMENT.matcher(text).replaceFirst("").stripTrailing();
    return new SourceLine(source, number, code, columns);
  }

  /**
   * Returns a part of the line.
   *
   * @param from index of its first character
   * @param to index after its last character
   */
  public SourceLine part(int from, int to) {
    ImmutableIntArray.Builder kept = ImmutableIntArray.builder(to - from + 1);
    for (int i = from; i <= to; i++) {
      kept.add(column(i));
    }
    return new SourceLine(source, number, text.substring(from, to), kept.build());
  }

  /** Returns the line without some of its characters, given by index. */
  public SourceLine without(boolean[] dropped) {
    StringBuilder kept = new StringBuilder();
    ImmutableIntArray.Builder places = ImmutableIntArray.builder(text.length() + 1);
    for (int i = 0; i < text.length(); i++) {
      if (!dropped[i]) {
        kept.append(text.charAt(i));
        places.add(column(i));
      }
    }
    places.add(column(text.length()));
    return new SourceLine(source, number, kept.toString(), places.build());
  }

  /** Returns the column in the file of the character at an index, from 1. */
  public int column(int index) {
    if (columns.isEmpty()) {
      return index + 1;
    }
    return columns.get(Math.min(index, columns.length() - 1));
  }

  /** Returns a cursor after the percent signs of a directive; for a comment, at the end. */
  public LineCursor directive() {
    return new LineCursor(this, text.indexOf("%%") < 0 ? text.length() : text.indexOf("%%") + 2);
  }

  /** Returns whether it is an information field. */
  public boolean field() {
    return FIELD.matcher(text).matches();
  }

  /** Returns the letter of the information field. */
  public char letter() {
    return text.charAt(0);
  }

  /** Returns a cursor after the colon of the information field. */
  public LineCursor content() {
    return new LineCursor(code(), 2);
  }

  /**
   * Returns the exception for a line that cannot be read.
   *
   * @param index the position, from 0
   * @param what what is wrong and what to write instead, with full stop
   */
  public AbcException error(int index, String what) {
    return new AbcException(
        "%s, line %d, column %d: %s".formatted(source, number, column(index), what));
  }
}
