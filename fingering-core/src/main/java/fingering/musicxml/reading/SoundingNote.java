package fingering.musicxml.reading;

import com.google.common.collect.ImmutableSet;
import fingering.music.Harmonic;
import fingering.music.Marks;
import fingering.musicxml.element.HarmonicSign;
import fingering.musicxml.element.WrittenNote;
import fingering.tables.Pitch;
import java.util.Optional;

/**
 * A sounding note, which is written as one note of the file, or as several for a harmonic.
 *
 * @param note its main note in the file
 * @param printed the pitch of that note, transposed
 * @param sounding the sounding pitch
 * @param marks the marks printed at it
 * @param tieStop whether a tie ends at it
 * @param tieStart whether a tie begins at it
 * @param tiedOthers the MIDI numbers, as printed, of the other notes that notate it and at which a
 *     tie begins
 */
record SoundingNote(
    WrittenNote note,
    Pitch printed,
    Pitch sounding,
    Marks marks,
    boolean tieStop,
    boolean tieStart,
    ImmutableSet<Integer> tiedOthers) {

  /**
   * Returns a note that sounds as printed.
   *
   * @param upper the upper note of its trill, transposed
   */
  static SoundingNote asPrinted(WrittenNote note, Pitch pitch, Optional<Pitch> upper) {
    Marks marks = upper.isPresent() ? note.marks().withTrill(upper) : note.marks();
    return new SoundingNote(
        note,
        pitch,
        pitch,
        marks,
        note.lines().tieStop(),
        note.lines().tieStart(),
        ImmutableSet.of());
  }

  /** Returns its notation as a harmonic. */
  HarmonicSign sign() {
    return note.sign();
  }

  /** Returns the same note as a harmonic. */
  SoundingNote harmonic(Pitch sounds, Harmonic harmonic) {
    // The printed upper note belongs to the printed pitch, not to another sounding pitch.
    Marks soundingMarks =
        sounds.midi() == printed.midi() ? marks : marks.withTrill(Optional.empty());
    return new SoundingNote(
        note, printed, sounds, soundingMarks.withHarmonic(harmonic), tieStop, tieStart, tiedOthers);
  }

  /** Returns the same note with the marks and ties of another note that notates it. */
  SoundingNote with(SoundingNote other) {
    ImmutableSet.Builder<Integer> others = ImmutableSet.builder();
    others.addAll(tiedOthers).addAll(other.tiedOthers);
    if (other.tieStart) {
      others.add(other.printed.midi());
    }
    return new SoundingNote(
        note,
        printed,
        sounding,
        marks.and(other.marks.withTrill(Optional.empty())),
        tieStop || other.tieStop,
        tieStart || other.tieStart,
        others.build());
  }

  /** Returns the same note with another printed finger, or none. */
  SoundingNote withFinger(Optional<String> finger) {
    return new SoundingNote(
        note, printed, sounding, marks.withFinger(finger), tieStop, tieStart, tiedOthers);
  }
}
