package fingering.musicxml.writing;

import com.google.common.collect.ImmutableList;
import fingering.music.BeatUnit;
import fingering.tables.Pitch;

/**
 * A note, a chord or a rest of simple music.
 *
 * @param pitches the pitches as written, lowest first; none is a rest
 * @param value the note value
 * @param slurEnds whether a slur ends here
 * @param slurBegins whether a slur begins here
 */
public record PlainNote(
    ImmutableList<Pitch> pitches, BeatUnit value, boolean slurEnds, boolean slurBegins) {

  /**
   * Checks the slurs.
   *
   * @throws IllegalArgumentException if a slur ends or begins at a rest
   */
  public PlainNote {
    if (pitches.isEmpty() && (slurEnds || slurBegins)) {
      throw new IllegalArgumentException("a slur at a rest");
    }
  }

  /** A note or chord without a slur; a rest where there is no pitch. */
  public static PlainNote of(ImmutableList<Pitch> pitches, BeatUnit value) {
    return new PlainNote(pitches, value, false, false);
  }
}
