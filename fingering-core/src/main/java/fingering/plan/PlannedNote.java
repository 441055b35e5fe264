package fingering.plan;

import fingering.fingerboard.Placement;
import fingering.music.Note;
import fingering.tables.Instrument;
import fingering.tables.Pitch;
import fingering.tables.Position;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A note with the placement that a plan gives it.
 *
 * @param moment index of its moment in the passage, from 0
 * @param note the note
 * @param placement its placement
 * @param shift whether the hand shifts to this note
 * @param crossing strings that the bow crosses to this note: 0 for none, 1 to the neighbouring
 *     string, 2 if it skips one
 * @param outside whether the note is outside the positions that the brief prefers
 */
public record PlannedNote(
    int moment, Note note, Placement placement, boolean shift, int crossing, boolean outside) {

  /** Whether it is an open string. */
  public boolean open() {
    return placement.open();
  }

  /** Whether two notes have the same string, finger and, if stopped, position. */
  public boolean sameFingering(PlannedNote other) {
    return string() == other.string()
        && placement.finger() == other.placement.finger()
        && (open() || position().equals(other.position()));
  }

  /** The number of the string, 1 for the highest. */
  public int string() {
    return placement.string();
  }

  /**
   * The symbol of the finger: 0 for open, 1 to 4, T for the thumb. To compare fingers, use {@code
   * placement().finger()}.
   */
  public String finger() {
    return placement.finger().symbol();
  }

  /** The pitch under the thumb on the note's string; empty outside thumb position. */
  public Optional<Pitch> thumb(Instrument instrument) {
    OptionalInt thumb = placement.frame().thumb();
    return thumb.isEmpty()
        ? Optional.empty()
        : Optional.of(instrument.string(string()).above(thumb.getAsInt()));
  }

  /** The position of the hand. */
  public Position position() {
    return placement.frame().position();
  }
}
