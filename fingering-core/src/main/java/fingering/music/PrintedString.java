package fingering.music;

import com.google.common.collect.ImmutableSet;

/**
 * Words above the staff that ask for one string, such as {@code sul G}, and the notes they apply
 * to.
 *
 * @param words the words as printed
 * @param string number of the string, 1 for the highest
 * @param from the place of the first note
 * @param to the place of the last note
 * @param end the reason why they end there
 * @param notes the notes to play on the string
 */
public record PrintedString(
    String words, int string, Place from, Place to, End end, ImmutableSet<NoteAddress> notes)
    implements PrintedWords {

  /** Why printed words no longer apply. */
  public enum End {
    /** Their printed line ends. */
    LINE("the end of its line"),
    /** Other words follow, for another string or for all strings. */
    WORDS("the next words"),
    /** A rest follows. */
    REST("the rest"),
    /** The next note is too high. */
    CLIMB("where the line climbs"),
    /** They apply to the last note of the part. */
    PART("the end");

    private final String description;

    End(String description) {
      this.description = description;
    }

    /** For use in a sentence: {@code the rest}. */
    public String description() {
      return description;
    }
  }
}
