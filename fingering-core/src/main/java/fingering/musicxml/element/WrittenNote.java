package fingering.musicxml.element;

import com.google.common.collect.ImmutableList;
import fingering.music.Marks;
import fingering.music.NoteAddress;
import fingering.tables.Pitch;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A note element with a pitch, before ties are joined and pitches transposed.
 *
 * @param time its position and length
 * @param start quarter notes from the start of the part
 * @param pitch the pitch in the file, rounded to semitones
 * @param transposition the transposition in effect, empty if the part states none
 * @param upper the upper note of its trill, untransposed
 * @param sign its notation as a harmonic
 * @param marks other marks printed at it
 * @param lines the ties and slurs that end and begin at it
 * @param pizzicato whether it is plucked, if the note itself says so
 * @param detached whether an articulation mark makes it short
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
    Optional<Boolean> pizzicato,
    boolean detached) {

  /**
   * The ties and slurs at a note.
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
   * Returns whether the note begins in a time span and belongs to a voice.
   *
   * @param from the start of the span, in quarter notes from the start of the part
   * @param until its end, exclusive
   * @param voice the voice; empty for any voice
   */
  public boolean within(BigFraction from, BigFraction until, String voice) {
    return Quarters.compare(start, from) >= 0
        && Quarters.compare(start, until) < 0
        && (voice.isEmpty() || voice.equals(time.voice()));
  }

  /** Returns its position in the file. */
  public NoteAddress address() {
    return time.address();
  }

  /** Returns the index of its measure in the part. */
  public int measure() {
    return address().measure();
  }

  /** Returns its onset, in quarter notes from the start of its measure. */
  public BigFraction onset() {
    return time.onset();
  }

  /** Returns its length in quarter notes; 0 for a grace note. */
  public BigFraction length() {
    return time.length();
  }

  /** Returns whether it is a grace note. */
  public boolean grace() {
    return time.grace();
  }

  /** Returns whether it begins together with the previous note in the file. */
  public boolean chord() {
    return time.chord();
  }

  /** Returns its voice as numbered in the file. */
  public String voice() {
    return time.voice();
  }

  /** Returns its end, in quarter notes from the start of the part. */
  public BigFraction end() {
    return start.add(length());
  }

  /** Returns the same note with another upper note of its trill, or none. */
  public WrittenNote withUpper(Optional<Pitch> other) {
    return with(other, marks, pizzicato);
  }

  /** Returns the same note plucked by the left hand. */
  public WrittenNote leftPlucked() {
    return with(upper, marks.withLeftPlucked(), pizzicato);
  }

  /** Returns the same note plucked by the right hand. */
  public WrittenNote plucked() {
    return with(upper, marks, Optional.of(true));
  }

  private WrittenNote with(
      Optional<Pitch> otherUpper, Marks otherMarks, Optional<Boolean> otherPizzicato) {
    return new WrittenNote(
        time,
        start,
        pitch,
        transposition,
        otherUpper,
        sign,
        otherMarks,
        lines,
        otherPizzicato,
        detached);
  }
}
