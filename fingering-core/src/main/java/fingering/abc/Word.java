package fingering.abc;

import com.google.common.collect.ImmutableList;

/**
 * A word of a field, such as {@code clef=alto}.
 *
 * @param key what stands before the equals sign; empty where there is none
 * @param value what stands behind it, or the whole word, without quotes
 * @param start where the word begins
 */
record Word(String key, String value, Cursor start) {

  /** The words that come next, to the end. */
  static ImmutableList<Word> all(Cursor cursor) {
    ImmutableList.Builder<Word> words = ImmutableList.builder();
    cursor.takeBlanks();
    while (!cursor.done()) {
      words.add(next(cursor));
      cursor.takeBlanks();
    }
    return words.build();
  }

  private static Word next(Cursor cursor) {
    Cursor start = cursor.back(0);
    String text = cursor.takeWhile(c -> c != ' ' && c != '\t' && c != '=' && c != '"');
    String key = "";
    // "=c" is an accidental and no value.
    if (!text.isEmpty() && cursor.take('=')) {
      key = text;
      text = "";
    }
    if (cursor.take('"')) {
      return new Word(key, cursor.upTo('"', "the name", start), start);
    }
    return new Word(key, text + cursor.takeWhile(c -> c != ' ' && c != '\t'), start);
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
