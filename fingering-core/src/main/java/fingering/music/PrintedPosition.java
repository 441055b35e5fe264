package fingering.music;

import com.google.common.collect.ImmutableSet;
import fingering.tables.Position;
import java.util.Optional;

/**
 * Words above the staff that name a position of the hand, such as {@code 3rd pos.}, and the notes
 * they apply to.
 *
 * @param words the words as printed
 * @param position the position; empty if it is a numeral that may mean a string instead
 * @param from the place of the first note
 * @param to the place of the last note
 * @param end the reason why they end there
 * @param notes the notes to play in that position
 */
public record PrintedPosition(
    String words,
    Optional<Position> position,
    Place from,
    Place to,
    PrintedString.End end,
    ImmutableSet<NoteAddress> notes)
    implements PrintedWords {

  /** Whether a line after the words shows how long they apply. */
  public boolean line() {
    return end == PrintedString.End.LINE;
  }
}
