package fingering.music;

import com.google.common.collect.ImmutableSet;

/**
 * Words over the staff that ask for one string, {@code sul G}, and what they hold for.
 *
 * @param words the words as printed
 * @param string number of the string, 1 being the highest
 * @param from where the first of the notes begins
 * @param to where the last of them begins
 * @param end what ends them
 * @param notes the notes to play on the string
 */
public record PrintedString(
    String words, int string, Place from, Place to, End end, ImmutableSet<NoteAddress> notes)
    implements PrintedWords {

  /** What ends such words. */
  public enum End {
    /** The line printed behind them. */
    LINE("the end of its line"),
    /** Other words, for another string or for all. */
    WORDS("the next words"),
    /** A rest. */
    REST("the rest"),
    /** A note too high for the string. */
    CLIMB("where the line climbs"),
    /** Nothing: they hold to the last note. */
    PART("the end");

    private final String told;

    End(String told) {
      this.told = told;
    }

    /** As in a sentence: {@code the rest}. */
    public String told() {
      return told;
    }
  }
}
