package fingering.musicxml.reading;

import fingering.music.Harmonic;
import fingering.music.Marks;
import fingering.musicxml.element.HarmonicSign;
import fingering.musicxml.element.WrittenNote;
import fingering.tables.Pitch;
import java.util.Optional;

/**
 * A note as it is heard, made of one note of the file or of several that print one harmonic.
 *
 * @param note the note of the file at which it stands
 * @param printed the pitch of that note, transposed
 * @param sounding the pitch that is heard
 * @param marks what is printed at it
 * @param tieStop whether a tie ends at it
 * @param tieStart whether a tie begins at it
 */
record HeardNote(
    WrittenNote note,
    Pitch printed,
    Pitch sounding,
    Marks marks,
    boolean tieStop,
    boolean tieStart) {

  /**
   * A note that sounds as printed.
   *
   * @param upper the upper note of its trill, transposed
   */
  static HeardNote asPrinted(WrittenNote note, Pitch pitch, Optional<Pitch> upper) {
    Marks marks = upper.isPresent() ? note.marks().withTrill(upper) : note.marks();
    return new HeardNote(
        note, pitch, pitch, marks, note.lines().tieStop(), note.lines().tieStart());
  }

  /** What the file says of a harmonic at it. */
  HarmonicSign sign() {
    return note.sign();
  }

  /** The same note, sounding as a harmonic. */
  HeardNote harmonic(Pitch sounds, Harmonic how) {
    // The upper note in print is one of the note in print, and tells nothing of another sound.
    Marks heard = sounds.midi() == printed.midi() ? marks : marks.withTrill(Optional.empty());
    return new HeardNote(note, printed, sounds, heard.withHarmonic(how), tieStop, tieStart);
  }

  /** The same note together with another print of it. */
  HeardNote with(HeardNote other) {
    return new HeardNote(
        note,
        printed,
        sounding,
        marks.and(other.marks.withTrill(Optional.empty())),
        tieStop || other.tieStop,
        tieStart || other.tieStart);
  }

  /** The same note with that finger printed, or with none. */
  HeardNote withFinger(Optional<String> finger) {
    return new HeardNote(note, printed, sounding, marks.withFinger(finger), tieStop, tieStart);
  }
}
