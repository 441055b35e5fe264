package fingering.plan;

import fingering.fingerboard.Placement;
import fingering.music.Note;
import fingering.tables.Instrument;
import fingering.tables.Pitch;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A note with the placement a plan gives it.
 *
 * @param moment index of its moment in the passage, from 0
 * @param note the note
 * @param placement its placement
 * @param shift whether the hand shifts to this note
 * @param crossing strings the bow crosses to this note: 0 none, 1 to the neighbour, 2 skipping one
 * @param outside whether the note lies outside the positions that the brief prefers
 */
public record PlannedNote(
    int moment, Note note, Placement placement, boolean shift, int crossing, boolean outside) {

  /** Whether it is an open string. */
  public boolean open() {
    return placement.open();
  }

  /** Whether both have the same string, finger and, stopped, position. */
  public boolean takenLike(PlannedNote other) {
    return placement.string() == other.placement.string()
        && placement.finger() == other.placement.finger()
        && (open() || position().equals(other.position()));
  }

  /** The finger's sign: 0 open, 1 to 4, T. */
  public String finger() {
    return placement.finger().symbol();
  }

  /** The pitch under the thumb on the note's string, where the hand is in thumb position. */
  public Optional<Pitch> thumb(Instrument instrument) {
    OptionalInt thumb = placement.frame().thumb();
    return thumb.isEmpty()
        ? Optional.empty()
        : Optional.of(instrument.string(placement.string()).above(thumb.getAsInt()));
  }

  /** The name of the position the hand is in. */
  public String position() {
    return placement.frame().position().toString();
  }
}
