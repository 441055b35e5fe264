package fingering.abc.syntax;

import java.util.regex.Pattern;

/**
 * A line as typed.
 *
 * @param source the name of its file in messages
 * @param number its number in the file, from 1
 * @param text the line, without line end
 */
public record SourceLine(String source, int number, String text) {
  // If a bar line or a repeat follows the letter, it is a note: "A:|".
  private static final Pattern FIELD = Pattern.compile("[A-Za-z+]:(?![:|]).*", Pattern.DOTALL);
  private static final Pattern COMMENT = Pattern.compile("(?<!\\\\)%.*", Pattern.DOTALL);

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
    return new SourceLine(source, number, COMMENT.matcher(text).replaceFirst("").stripTrailing());
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
        "%s, line %d, column %d: %s".formatted(source, number, index + 1, what));
  }
}
