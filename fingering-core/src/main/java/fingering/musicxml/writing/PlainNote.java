package fingering.musicxml.writing;

import com.google.common.collect.ImmutableList;
import fingering.music.BeatUnit;
import fingering.tables.Pitch;

/**
 * A note, a chord or a rest of simple music. Immutable.
 *
 * @param pitches the written pitches, lowest first; empty for a rest
 * @param value the note value
 * @param slurEnds whether a slur ends here
 * @param slurBegins whether a slur begins here
 */
public record PlainNote(
    ImmutableList<Pitch> pitches, BeatUnit value, boolean slurEnds, boolean slurBegins) {

  /**
   * Checks the components.
   *
   * @throws IllegalArgumentException if a slur ends or begins at a rest
   */
  public PlainNote {
    if (pitches.isEmpty() && (slurEnds || slurBegins)) {
      throw new IllegalArgumentException("a slur cannot begin or end at a rest");
    }
  }

  /** Returns a note or chord without a slur; a rest if there is no pitch. */
  public static PlainNote of(ImmutableList<Pitch> pitches, BeatUnit value) {
    return new PlainNote(pitches, value, false, false);
  }
}
