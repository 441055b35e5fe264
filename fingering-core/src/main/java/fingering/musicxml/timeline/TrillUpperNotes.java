package fingering.musicxml.timeline;

import fingering.musicxml.element.Ornament;
import fingering.musicxml.element.Quarters;
import fingering.musicxml.element.WrittenNote;
import fingering.tables.Pitch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Finds the upper notes of trills in a part, measure by measure. An accidental applies to the end
 * of its measure, in its octave only (common practice). It may be in a voice that comes later in
 * the file, so trills are completed at the end of the measure.
 */
public final class TrillUpperNotes {

  private record Shown(BigFraction onset, Pitch pitch) {}

  private record Trill(int note, Ornament ornament, int fifths) {}

  private final List<Shown> shown = new ArrayList<>();
  private final List<Trill> trills = new ArrayList<>();

  /** Adds a note whose accidental applies to its letter and octave from here on. */
  public void shows(Pitch pitch, BigFraction onset) {
    shown.add(new Shown(onset, pitch));
  }

  /**
   * Adds a trill.
   *
   * @param note index of its note in the list of the notes of the part
   * @param fifths sharps of the key signature, negative for flats
   */
  public void trill(int note, Ornament ornament, int fifths) {
    trills.add(new Trill(note, ornament, fifths));
  }

  /**
   * Ends a measure, and sets the upper notes of its trills in the list of the notes of the part.
   */
  public void endMeasure(List<WrittenNote> notes) {
    if (!trills.isEmpty()) {
      shown.sort(Comparator.comparing(Shown::onset, Quarters.ORDER));
      for (Trill trill : trills) {
        WrittenNote note = notes.get(trill.note());
        OptionalInt alter = lastShown(note.pitch().letterNumber() + 1, note.onset());
        notes.set(
            trill.note(),
            note.withUpper(trill.ornament().upper(note.pitch(), trill.fifths(), alter)));
      }
      trills.clear();
    }
    shown.clear();
  }

  private OptionalInt lastShown(int letter, BigFraction onset) {
    return shown.stream()
        .filter(each -> each.pitch().letterNumber() == letter)
        .filter(each -> Quarters.compare(each.onset(), onset) <= 0)
        .mapToInt(each -> each.pitch().alter())
        .reduce((earlier, later) -> later);
  }
}
