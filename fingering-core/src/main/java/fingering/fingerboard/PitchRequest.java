package fingering.fingerboard;

import fingering.music.Harmonic;
import fingering.music.Note;
import fingering.tables.Pitch;
import java.util.Optional;

/**
 * What the left hand has to make sound: as much of a note as decides where it can be taken.
 *
 * @param pitch the sounding pitch
 * @param trill the sounding upper note of a trill
 * @param harmonic how it is a harmonic; empty for an ordinary note
 * @param leftPlucked whether the left hand has to pluck it too
 */
public record PitchRequest(
    Pitch pitch, Optional<Pitch> trill, Optional<Harmonic> harmonic, boolean leftPlucked) {

  /** An ordinary note of that sounding pitch. */
  public static PitchRequest of(Pitch pitch) {
    return new PitchRequest(pitch, Optional.empty(), Optional.empty(), false);
  }

  /** What a note of the music asks for. */
  public static PitchRequest of(Note note) {
    return new PitchRequest(
        note.sounding(), note.marks().trill(), note.marks().harmonic(), note.marks().leftPlucked());
  }
}
