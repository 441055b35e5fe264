package fingering.engraving.notes;

import com.google.common.collect.ImmutableList;

/**
 * Chords under one beam, or two under the strokes of one tremolo.
 *
 * @param chords the chords in order of time, two or more
 * @param tremolo whether the beams are strokes of a tremolo
 */
public record BeamGroup(ImmutableList<Chord> chords, boolean tremolo) {
  /** The number of beams that a chord has. */
  public int beams(Chord chord) {
    return tremolo ? chord.tremolo().strokes() : chord.flags();
  }

  /** Whether the beam is above the notes. */
  public boolean up() {
    return chords.get(0).up();
  }
}
