package fingering.fingerboard;

import fingering.music.Harmonic;
import fingering.music.Note;
import fingering.tables.Pitch;
import java.util.Optional;

/**
 * The properties of a note that determine its placements.
 *
 * @param pitch the sounding pitch
 * @param trill the sounding upper note of a trill; empty if there is none
 * @param harmonic the harmonic; empty for an ordinary note
 * @param leftPlucked whether the left hand plucks it
 */
public record PitchRequest(
    Pitch pitch, Optional<Pitch> trill, Optional<Harmonic> harmonic, boolean leftPlucked) {

  /** An ordinary note with that sounding pitch. */
  public static PitchRequest of(Pitch pitch) {
    return new PitchRequest(pitch, Optional.empty(), Optional.empty(), false);
  }

  /** The properties of a note. */
  public static PitchRequest of(Note note) {
    return new PitchRequest(
        note.sounding(), note.marks().trill(), note.marks().harmonic(), note.marks().leftPlucked());
  }
}
