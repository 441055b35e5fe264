package fingering.music;

import fingering.tables.Pitch;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A sounding note; tied notes are one.
 *
 * @param address where the (first) note stands in the file
 * @param place where it stands in the music
 * @param written the note as printed
 * @param sounding the note as it sounds, spelled alike
 * @param start quarter notes from the start of the part
 * @param length length with its ties in quarter notes; 0 for a grace note
 * @param marks what is printed at it
 */
public record Note(
    NoteAddress address,
    Place place,
    Pitch written,
    Pitch sounding,
    BigFraction start,
    BigFraction length,
    Marks marks) {

  /** The sounding MIDI number. */
  public int midi() {
    return sounding.midi();
  }

  /** Where the note ends, in quarter notes from the start of the part. */
  public BigFraction end() {
    return start.add(length);
  }
}
