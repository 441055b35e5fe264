package fingering.abc.syntax;

import com.google.common.collect.ImmutableList;

/**
 * A word of a field, such as {@code clef=alto}.
 *
 * @param key what stands before the equals sign; empty where there is none
 * @param value what stands behind it, or the whole word, without quotes
 * @param start where the word begins
 */
public record FieldWord(String key, String value, LineCursor start) {

  /** The words that come next, to the end. */
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
    LineCursor start = cursor.back(0);
    String text = cursor.takeWhile(c -> c != ' ' && c != '\t' && c != '=' && c != '"');
    String key = "";
    // "=c" is an accidental and no value.
    if (!text.isEmpty() && cursor.take('=')) {
      key = text;
      text = "";
    }
    if (cursor.take('"')) {
      return new FieldWord(key, cursor.upTo('"', "the name", start), start);
    }
    return new FieldWord(key, text + cursor.takeWhile(c -> c != ' ' && c != '\t'), start);
  }

  /** Whether it stands alone, without a key. */
  boolean bare() {
    return key.isEmpty();
  }

  /** As typed. */
  @Override
  public String toString() {
    return bare() ? value : key + "=" + value;
  }

  /** What to throw where the word cannot be read. */
  AbcException wrong(String what) {
    return start.wrong(what);
  }
}
