package fingering.music;

import java.util.Comparator;

/**
 * Where a note stands in a score, counted in document order from 0. Every {@code <note>} element
 * counts: rests, grace notes, cue notes and the further notes of a chord too.
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
          "A note address counts from 0, but got part %d, measure %d, note %d."
              .formatted(part, measure, note));
    }
  }

  /** Compares by place in the document: by part, then measure, then note. */
  @Override
  public int compareTo(NoteAddress other) {
    return DOCUMENT_ORDER.compare(this, other);
  }
}
