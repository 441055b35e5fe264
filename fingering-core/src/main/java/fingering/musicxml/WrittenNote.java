package fingering.musicxml;

import com.google.common.collect.ImmutableList;
import fingering.music.Marks;
import fingering.music.NoteAddress;
import fingering.tables.Pitch;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A pitched note element as the file has it, before ties are joined and pitches transposed.
 *
 * @param address where it stands in the file
 * @param onset quarter notes from the start of its measure
 * @param start quarter notes from the start of the part
 * @param length in quarter notes; 0 for a grace note
 * @param grace whether it is a grace note
 * @param chord whether it begins with the note before it in the file
 * @param voice the voice as numbered in the file
 * @param pitch the pitch in the file, to the nearest semitone
 * @param transposition the transposition in effect, empty where the part names none
 * @param upper the upper note of its trill, in the file's pitch
 * @param sign what it says of a harmonic
 * @param marks what else is printed at it
 * @param lines the ties and slurs that end and begin at it
 * @param pizzicato whether it is plucked, where the note itself says so
 */
record WrittenNote(
    NoteAddress address,
    BigFraction onset,
    BigFraction start,
    BigFraction length,
    boolean grace,
    boolean chord,
    String voice,
    Pitch pitch,
    Optional<Transposition> transposition,
    Optional<Pitch> upper,
    HarmonicSign sign,
    Marks marks,
    Lines lines,
    Optional<Boolean> pizzicato) {

  /**
   * The curved lines at a note.
   *
   * @param tieStop whether a tie ends here
   * @param tieStart whether a tie begins here
   * @param slurStops the numbers of the slurs that end here
   * @param slurStarts the numbers of the slurs that begin here
   */
  record Lines(
      boolean tieStop,
      boolean tieStart,
      ImmutableList<Integer> slurStops,
      ImmutableList<Integer> slurStarts) {}

  /** Index of its measure in the part. */
  int measure() {
    return address.measure();
  }

  /** Where it ends, in quarter notes from the start of the part. */
  BigFraction end() {
    return start.add(length);
  }

  /** The same note with that upper note of a trill, or with none. */
  WrittenNote withUpper(Optional<Pitch> other) {
    return with(other, marks, pizzicato);
  }

  /** The same note plucked by the left hand. */
  WrittenNote leftPlucked() {
    return with(upper, marks.withLeftPlucked(), pizzicato);
  }

  /** The same note plucked by the right hand. */
  WrittenNote plucked() {
    return with(upper, marks, Optional.of(true));
  }

  private WrittenNote with(
      Optional<Pitch> otherUpper, Marks otherMarks, Optional<Boolean> otherPizzicato) {
    return new WrittenNote(
        address,
        onset,
        start,
        length,
        grace,
        chord,
        voice,
        pitch,
        transposition,
        otherUpper,
        sign,
        otherMarks,
        lines,
        otherPizzicato);
  }
}
