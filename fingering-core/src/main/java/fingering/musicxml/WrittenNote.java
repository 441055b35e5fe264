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
 * @param time where it stands, and how long it lasts
 * @param start quarter notes from the start of the part
 * @param pitch the pitch in the file, to the nearest semitone
 * @param transposition the transposition in effect, empty where the part names none
 * @param upper the upper note of its trill, in the file's pitch
 * @param sign what it says of a harmonic
 * @param marks what else is printed at it
 * @param lines the ties and slurs that end and begin at it
 * @param pizzicato whether it is plucked, where the note itself says so
 */
record WrittenNote(
    NoteTime time,
    BigFraction start,
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

  /**
   * Whether it begins from a time on and before another, in quarter notes from the start of the
   * part, and in a voice; in any where that is empty.
   */
  boolean within(BigFraction from, BigFraction until, String voice) {
    return Quarters.compare(start, from) >= 0
        && Quarters.compare(start, until) < 0
        && (voice.isEmpty() || voice.equals(time.voice()));
  }

  /** Where it stands in the file. */
  NoteAddress address() {
    return time.address();
  }

  /** Index of its measure in the part. */
  int measure() {
    return address().measure();
  }

  /** Quarter notes from the start of its measure. */
  BigFraction onset() {
    return time.onset();
  }

  /** Its length in quarter notes; 0 for a grace note. */
  BigFraction length() {
    return time.length();
  }

  /** Whether it is a grace note. */
  boolean grace() {
    return time.grace();
  }

  /** Whether it begins with the note before it in the file. */
  boolean chord() {
    return time.chord();
  }

  /** The voice as numbered in the file. */
  String voice() {
    return time.voice();
  }

  /** Where it ends, in quarter notes from the start of the part. */
  BigFraction end() {
    return start.add(length());
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
        time, start, pitch, transposition, otherUpper, sign, otherMarks, lines, otherPizzicato);
  }
}
