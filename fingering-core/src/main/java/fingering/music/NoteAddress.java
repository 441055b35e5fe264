package fingering.music;

import java.util.Comparator;

/**
 * The address of a note in a score, counted in document order from 0. All {@code <note>} elements
 * count, including rests, grace notes, cue notes and all notes of a chord.
 *
 * @param part index of the part among the {@code <part>} elements of the score, from 0
 * @param measure index of the measure among the {@code <measure>} elements of that part, from 0
 *     (not the printed measure number)
 * @param note index of the note among the {@code <note>} elements of that measure, from 0
 */
public record NoteAddress(int part, int measure, int note) implements Comparable<NoteAddress> {

  private static final Comparator<NoteAddress> DOCUMENT_ORDER =
      Comparator.comparingInt(NoteAddress::part)
          .thenComparingInt(NoteAddress::measure)
          .thenComparingInt(NoteAddress::note);

  /**
   * Checks the three indices.
   *
   * @throws IllegalArgumentException if one of them is negative
   */
  public NoteAddress {
    if (part < 0 || measure < 0 || note < 0) {
      throw new IllegalArgumentException(
          "negative index in note address: part %d, measure %d, note %d"
              .formatted(part, measure, note));
    }
  }

  /** Compares in document order: by part, then measure, then note. */
  @Override
  public int compareTo(NoteAddress other) {
    return DOCUMENT_ORDER.compare(this, other);
  }
}
