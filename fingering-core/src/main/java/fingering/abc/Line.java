package fingering.abc;

import java.util.regex.Pattern;

/**
 * A line as typed.
 *
 * @param source how messages call the file it stands in
 * @param number its number in that file, from 1
 * @param text the line, without its end
 */
record Line(String source, int number, String text) {
  // A bar line or a repeat behind the letter makes it a note: "A:|".
  private static final Pattern FIELD = Pattern.compile("[A-Za-z+]:(?![:|]).*", Pattern.DOTALL);
  private static final Pattern COMMENT = Pattern.compile("(?<!\\\\)%.*", Pattern.DOTALL);

  /** Whether nothing stands in it. */
  boolean blank() {
    return text.isBlank();
  }

  /** Whether it is a remark, or a word to programs that print or play. */
  boolean comment() {
    return text.stripLeading().startsWith("%");
  }

  /** The line without the remark at its end. */
  Line code() {
    return new Line(source, number, COMMENT.matcher(text).replaceFirst("").stripTrailing());
  }

  /** What stands behind the percent signs of a remark, which may be a word to programs. */
  Cursor directive() {
    return new Cursor(this, text.indexOf("%%") < 0 ? text.length() : text.indexOf("%%") + 2);
  }

  /** Whether it is an information field. */
  boolean field() {
    return FIELD.matcher(text).matches();
  }

  /** The letter of the information field that it is. */
  char letter() {
    return text.charAt(0);
  }

  /** What stands behind the colon of the information field that it is. */
  Cursor content() {
    return new Cursor(code(), 2);
  }

  /** What to throw where the line cannot be read at a place, an index from 0. */
  AbcException wrong(int index, String what) {
    return new AbcException(
        "%s, line %d, column %d: %s".formatted(source, number, index + 1, what));
  }
}
