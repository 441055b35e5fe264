package fingering.musicxml.marking;

import fingering.music.NoteAddress;
import fingering.musicxml.xml.XmlText;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The marks to write at one note. Immutable.
 *
 * @param note the note to mark
 * @param finger "0" for the open string, "1" to "4", or "T" for the thumb; empty to write none
 * @param string the string to write as a string number, from 1 for the highest; empty for none
 * @param numeral the string to write as a Roman numeral above the staff, from 1; empty for none
 * @param words words above the staff at the note, such as "3rd pos."; empty to write none
 */
public record NoteMarks(
    NoteAddress note,
    Optional<String> finger,
    OptionalInt string,
    OptionalInt numeral,
    Optional<String> words) {

  private static final String FINGERS = "01234T";

  /**
   * Checks the marks.
   *
   * @throws IllegalArgumentException if the finger is not 0 to 4 or T, the string is below 1, or
   *     the words are blank or contain a character that XML does not allow
   */
  public NoteMarks {
    Objects.requireNonNull(note, "note");
    if (finger.isPresent() && !isFinger(finger.get())) {
      throw new IllegalArgumentException(
          "A finger is one of 0, 1, 2, 3, 4 and T, not '%s'.".formatted(finger.get()));
    }
    checkString(string);
    checkString(numeral);
    if (words.isPresent() && (words.get().isBlank() || !XmlText.isLegal(words.get()))) {
      throw new IllegalArgumentException(
          "The words at a note must be printable text, not '%s'.".formatted(words.get()));
    }
  }

  /**
   * Marks without a numeral.
   *
   * @param note the note to mark
   * @param finger as above
   * @param string as above
   * @param words as above
   * @throws IllegalArgumentException as above
   */
  public NoteMarks(
      NoteAddress note, Optional<String> finger, OptionalInt string, Optional<String> words) {
    this(note, finger, string, OptionalInt.empty(), words);
  }

  /** Returns whether there is nothing to write. */
  public boolean isEmpty() {
    return finger.isEmpty() && string.isEmpty() && numeral.isEmpty() && words.isEmpty();
  }

  private static void checkString(OptionalInt string) {
    if (string.isPresent() && string.getAsInt() < 1) {
      throw new IllegalArgumentException(
          "Strings are numbered from 1 for the highest, not %d.".formatted(string.getAsInt()));
    }
  }

  private static boolean isFinger(String text) {
    return text.length() == 1 && FINGERS.contains(text);
  }
}
