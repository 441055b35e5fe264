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
 * Take notes as an earlier plan did.
 *
 * @param source what to call the plan, its file say
 * @param notes how each of its notes is taken
 * @param span where
 */
public record KeepPlan(String source, ImmutableMap<NoteAddress, Taken> notes, MeasureSpan span)
    implements GripDemand {

  /**
   * How a note is taken.
   *
   * @param string number of the string, 1 being the highest
   * @param finger the finger
   * @param position the position; empty for an open string
   * @param thumb in thumb position the semitones of the thumb above the open string; empty where it
   *     does not matter
   */
  public record Taken(int string, Finger finger, Optional<Position> position, OptionalInt thumb) {
    private boolean so(Placement placement) {
      return placement.string() == string
          && placement.finger() == finger
          && position.map(placement.frame().position()::equals).orElse(true)
          && (thumb.isEmpty() || thumb.equals(placement.frame().thumb()));
    }
  }

  @Override
  public BitSet concerns(Passage passage) {
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
  public boolean keeps(Moment moment, Grip grip) {
    ImmutableList<Note> held = grip.notes(moment);
    for (int i = 0; i < held.size(); i++) {
      Taken taken = notes.get(held.get(i).address());
      if (taken != null
          && moment.starting().contains(held.get(i))
          && !taken.so(grip.placements().get(i))) {
        return false;
      }
    }
    return true;
  }

  @Override
  public String words() {
    return "take "
        + (notes.size() == 1 ? "a note" : notes.size() + " notes")
        + " as in "
        + source
        + span.words();
  }
}
