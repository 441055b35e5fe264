package fingering.abc.syntax;

import com.google.common.collect.ImmutableList;

/**
 * A word of a field, such as {@code clef=alto}.
 *
 * @param key the text before the equals sign; empty without one
 * @param value the text after it, or the whole word, without quotes
 * @param start the position of the word
 */
public record FieldWord(String key, String value, LineCursor start) {

  /** Reads all words to the end of the line. */
  public static ImmutableList<FieldWord> all(LineCursor cursor, Repairs repairs) {
    ImmutableList.Builder<FieldWord> words = ImmutableList.builder();
    cursor.takeBlanks();
    while (!cursor.done()) {
      words.add(next(cursor, repairs));
      cursor.takeBlanks();
    }
    return words.build();
  }

  private static FieldWord next(LineCursor cursor, Repairs repairs) {
    LineCursor start = cursor.copy();
    String text = cursor.takeWhile(c -> c != ' ' && c != '\t' && c != '=' && c != '"');
    String key = "";
    // "=c" is an accidental, not a value.
    if (!text.isEmpty() && cursor.take('=')) {
      key = text;
      text = "";
    }
    if (cursor.take('"')) {
      String name = cursor.upTo('"');
      if (cursor.peek(-1) != '"') {
        repairs.add(
            start, "the name that begins here has no end; it was read to the end of the line");
      }
      return new FieldWord(key, name, start);
    }
    return new FieldWord(key, text + cursor.takeWhile(c -> c != ' ' && c != '\t'), start);
  }

  /** Returns whether it has no key. */
  boolean bare() {
    return key.isEmpty();
  }

  /** Returns the word as typed. */
  @Override
  public String toString() {
    return bare() ? value : key + "=" + value;
  }
}
