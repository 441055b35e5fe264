package fingering.music;

import com.google.common.collect.ImmutableSet;
import fingering.tables.Position;
import java.util.Optional;

/**
 * Words over the staff that name the position of the hand, {@code 3rd pos.}, and what they hold
 * for.
 *
 * @param words the words as printed
 * @param position the position; empty where a numeral may as well mean a string
 * @param from where the first of the notes begins
 * @param to where the last of them begins
 * @param end what ends them, unless a note before cannot be reached
 * @param notes the notes for which the hand is to be there
 */
public record PrintedPosition(
    String words,
    Optional<Position> position,
    Place from,
    Place to,
    PrintedString.End end,
    ImmutableSet<NoteAddress> notes)
    implements PrintedWords {

  /** Whether a line is printed behind the words, so that they hold as long as that. */
  public boolean line() {
    return end == PrintedString.End.LINE;
  }
}
