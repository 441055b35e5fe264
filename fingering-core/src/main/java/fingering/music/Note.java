package fingering.music;

import fingering.tables.Pitch;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A note as it sounds; tied notes are one note.
 *
 * @param address address of the note in the score, of the first if tied
 * @param place the place in the music
 * @param written the printed pitch
 * @param sounding the sounding pitch, in the same spelling
 * @param start start in quarter notes from the start of the part
 * @param length length in quarter notes including tied notes; 0 for a grace note
 * @param marks the marks printed at it
 */
public record Note(
    NoteAddress address,
    Place place,
    Pitch written,
    Pitch sounding,
    BigFraction start,
    BigFraction length,
    Marks marks) {

  /** The MIDI number of the sounding pitch. */
  public int midi() {
    return sounding.midi();
  }

  /** The end in quarter notes from the start of the part. */
  public BigFraction end() {
    return start.add(length);
  }
}
