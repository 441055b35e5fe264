package fingering.musicxml;

import fingering.music.Marks;
import fingering.tables.Pitch;
import java.util.Optional;

/**
 * A note as it is heard.
 *
 * @param note the note of the file at which it stands
 * @param printed the pitch of that note, transposed
 * @param sounding the pitch that is heard
 * @param marks what is printed at it
 * @param tieStop whether a tie ends at it
 * @param tieStart whether a tie begins at it
 */
record Played(
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
  static Played asPrinted(WrittenNote note, Pitch pitch, Optional<Pitch> upper) {
    Marks marks = upper.isPresent() ? note.marks().withTrill(upper) : note.marks();
    return new Played(note, pitch, pitch, marks, note.lines().tieStop(), note.lines().tieStart());
  }
}
