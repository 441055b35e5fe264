package fingering.music.print;

import fingering.music.Place;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Text or a sign printed at a staff.
 *
 * @param kind the kind of text
 * @param text the text, such as {@code sf}, {@code pizz.} or {@code quarter=96}; not empty
 * @param place the place in the music
 * @param start the same as a time in quarter notes from the start of the part
 * @param direction number of the direction that it belongs to, from 0 in the part. Texts with the
 *     same number are printed on one line, in order: <i>Allegro</i> and its metronome mark. Below 0
 *     for texts that the score prints above another part, for all players
 * @param side the side of the staff
 * @param style how words are printed; where words of one direction differ, that of the first
 * @param metronome the parts of a metronome mark; empty for all other kinds
 */
public record PrintedText(
    Kind kind,
    String text,
    Place place,
    BigFraction start,
    int direction,
    Side side,
    Style style,
    Optional<Metronome> metronome) {

  /** A kind of text. */
  public enum Kind {
    /** A dynamic: {@code mf}, {@code sfz}. */
    DYNAMIC,
    /** Words. */
    WORDS,
    /** A metronome mark. */
    TEMPO,
    /** A sign to put on or take off the mute. */
    MUTE,
    /** A segno or coda sign. */
    JUMP,
    /** A rehearsal mark. */
    REHEARSAL
  }

  /**
   * How words are printed, as far as the score says.
   *
   * @param bold whether they are bold
   * @param italic whether they are italic
   * @param boxed whether they are in a box or a circle
   */
  public record Style(boolean bold, boolean italic, boolean boxed) {
    /** Nothing is stated. */
    public static final Style PLAIN = new Style(false, false, false);
  }

  /**
   * A metronome mark: the sign of a note, an equals sign and a number.
   *
   * @param unit the note value that is counted
   * @param number the number as printed, such as {@code 96}, {@code 96-100} or {@code c. 96}
   * @param parentheses whether it is in parentheses
   */
  public record Metronome(PrintedNote.Value unit, String number, boolean parentheses) {}
}
