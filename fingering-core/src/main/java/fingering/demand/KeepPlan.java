package fingering.demand;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.fingerboard.Finger;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.NoteAddress;
import fingering.music.Passage;
import fingering.tables.Position;
import java.util.BitSet;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Keeps the fingering of an earlier plan.
 *
 * @param source the name of the plan in messages, usually its file
 * @param notes the fingering of each note to keep
 * @param span the measures in which it applies
 */
public record KeepPlan(
    String source, ImmutableMap<NoteAddress, KeptFingering> notes, MeasureSpan span)
    implements GripDemand {

  /**
   * The fingering of a note.
   *
   * @param string number of the string, 1 for the highest
   * @param finger the finger
   * @param position the position; empty for an open string
   * @param thumb in thumb position the semitones of the thumb above the open string; empty if it
   *     does not matter
   */
  public record KeptFingering(
      int string, Finger finger, Optional<Position> position, OptionalInt thumb) {
    private boolean matches(Placement placement) {
      return placement.string() == string
          && placement.finger() == finger
          && position.map(placement.frame().position()::equals).orElse(true)
          && (thumb.isEmpty() || thumb.equals(placement.frame().thumb()));
    }
  }

  @Override
  public BitSet moments(Passage passage) {
    BitSet moments = new BitSet();
    for (int m = 0; m < passage.moments().size(); m++) {
      moments.set(
          m,
          passage.moments().get(m).starting().stream()
              .anyMatch(note -> notes.containsKey(note.address())));
    }
    return moments;
  }

  @Override
  public boolean allows(Moment moment, Grip grip) {
    ImmutableList<Note> sounding = grip.notes(moment);
    for (int i = 0; i < sounding.size(); i++) {
      KeptFingering fingering = notes.get(sounding.get(i).address());
      if (fingering != null
          && moment.starting().contains(sounding.get(i))
          && !fingering.matches(grip.placements().get(i))) {
        return false;
      }
    }
    return true;
  }

  @Override
  public String text() {
    return "play "
        + (notes.size() == 1 ? "a note" : notes.size() + " notes")
        + " as in "
        + source
        + span.suffix();
  }
}
