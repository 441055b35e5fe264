package fingering.abc.syntax;

import java.util.regex.Pattern;

/**
 * A line as typed.
 *
 * @param source how messages call the file it stands in
 * @param number its number in that file, from 1
 * @param text the line, without its end
 */
public record SourceLine(String source, int number, String text) {
  // A bar line or a repeat behind the letter makes it a note: "A:|".
  private static final Pattern FIELD = Pattern.compile("[A-Za-z+]:(?![:|]).*", Pattern.DOTALL);
  private static final Pattern COMMENT = Pattern.compile("(?<!\\\\)%.*", Pattern.DOTALL);

  /** Whether nothing stands in it. */
  public boolean blank() {
    return text.isBlank();
  }

  /** Whether it is a remark, or a word to programs that print or play. */
  public boolean comment() {
    return text.stripLeading().startsWith("%");
  }

  /** The line without the remark at its end. */
  public SourceLine code() {
    return new SourceLine(source, number, COMMENT.matcher(text).replaceFirst("").stripTrailing());
  }

  /** What stands behind the percent signs of a remark, which may be a word to programs. */
  public LineCursor directive() {
    return new LineCursor(this, text.indexOf("%%") < 0 ? text.length() : text.indexOf("%%") + 2);
  }

  /** Whether it is an information field. */
  public boolean field() {
    return FIELD.matcher(text).matches();
  }

  /** The letter of the information field that it is. */
  public char letter() {
    return text.charAt(0);
  }

  /** What stands behind the colon of the information field that it is. */
  public LineCursor content() {
    return new LineCursor(code(), 2);
  }

  /** What to throw where the line cannot be read at a place, an index from 0. */
  public AbcException wrong(int index, String what) {
    return new AbcException(
        "%s, line %d, column %d: %s".formatted(source, number, index + 1, what));
  }
}
