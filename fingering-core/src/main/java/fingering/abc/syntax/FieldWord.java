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
  public static ImmutableList<FieldWord> all(LineCursor cursor) {
    ImmutableList.Builder<FieldWord> words = ImmutableList.builder();
    cursor.takeBlanks();
    while (!cursor.done()) {
      words.add(next(cursor));
      cursor.takeBlanks();
    }
    return words.build();
  }

  private static FieldWord next(LineCursor cursor) {
    LineCursor start = cursor.copy();
    String text = cursor.takeWhile(c -> c != ' ' && c != '\t' && c != '=' && c != '"');
    String key = "";
    // "=c" is an accidental, not a value.
    if (!text.isEmpty() && cursor.take('=')) {
      key = text;
      text = "";
    }
    if (cursor.take('"')) {
      return new FieldWord(key, cursor.upTo('"', "the name", start), start);
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

  /** Returns the exception for a word that cannot be read. */
  AbcException error(String what) {
    return start.error(what);
  }
}
