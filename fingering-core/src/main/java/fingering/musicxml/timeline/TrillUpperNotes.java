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
 * Finds the upper notes of trills in a part, measure by measure. An accidental lasts to the end of
 * its measure, for its octave only (common practice); it may stand in a voice that the file writes
 * later, so the trills wait for the end of the measure.
 */
public final class TrillUpperNotes {

  private record Shown(BigFraction onset, Pitch pitch) {}

  private record Trill(int note, Ornament ornament, int fifths) {}

  private final List<Shown> shown = new ArrayList<>();
  private final List<Trill> trills = new ArrayList<>();

  /** Takes a note whose alteration is what the measure shows for its letter and octave. */
  public void shows(Pitch pitch, BigFraction onset) {
    shown.add(new Shown(onset, pitch));
  }

  /**
   * Takes a trill.
   *
   * @param note index of its note among those of the part
   * @param fifths sharps, or flats below 0, of the key signature
   */
  public void trill(int note, Ornament ornament, int fifths) {
    trills.add(new Trill(note, ornament, fifths));
  }

  /** Gives the notes of the measure that ends here their upper notes. */
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
