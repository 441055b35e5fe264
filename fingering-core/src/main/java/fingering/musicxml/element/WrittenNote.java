package fingering.musicxml.element;

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
public record WrittenNote(
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
  public record Lines(
      boolean tieStop,
      boolean tieStart,
      ImmutableList<Integer> slurStops,
      ImmutableList<Integer> slurStarts) {}

  /**
   * Whether it begins from a time on and before another, in quarter notes from the start of the
   * part, and in a voice; in any where that is empty.
   */
  public boolean within(BigFraction from, BigFraction until, String voice) {
    return Quarters.compare(start, from) >= 0
        && Quarters.compare(start, until) < 0
        && (voice.isEmpty() || voice.equals(time.voice()));
  }

  /** Where it stands in the file. */
  public NoteAddress address() {
    return time.address();
  }

  /** Index of its measure in the part. */
  public int measure() {
    return address().measure();
  }

  /** Quarter notes from the start of its measure. */
  public BigFraction onset() {
    return time.onset();
  }

  /** Its length in quarter notes; 0 for a grace note. */
  public BigFraction length() {
    return time.length();
  }

  /** Whether it is a grace note. */
  public boolean grace() {
    return time.grace();
  }

  /** Whether it begins with the note before it in the file. */
  public boolean chord() {
    return time.chord();
  }

  /** The voice as numbered in the file. */
  public String voice() {
    return time.voice();
  }

  /** Where it ends, in quarter notes from the start of the part. */
  public BigFraction end() {
    return start.add(length());
  }

  /** The same note with that upper note of a trill, or with none. */
  public WrittenNote withUpper(Optional<Pitch> other) {
    return with(other, marks, pizzicato);
  }

  /** The same note plucked by the left hand. */
  public WrittenNote leftPlucked() {
    return with(upper, marks.withLeftPlucked(), pizzicato);
  }

  /** The same note plucked by the right hand. */
  public WrittenNote plucked() {
    return with(upper, marks, Optional.of(true));
  }

  private WrittenNote with(
      Optional<Pitch> otherUpper, Marks otherMarks, Optional<Boolean> otherPizzicato) {
    return new WrittenNote(
        time, start, pitch, transposition, otherUpper, sign, otherMarks, lines, otherPizzicato);
  }
}
