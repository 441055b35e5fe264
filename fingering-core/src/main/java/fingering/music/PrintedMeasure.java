package fingering.music;

import com.google.common.collect.ImmutableList;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A measure as printed.
 *
 * @param index index in the part, from 0
 * @param clef the clef at its start
 * @param clefs changes of clef within it, in order
 * @param notes notes and rests, in document order
 * @param keys changes of key within it, in order
 * @param texts words, dynamics and tempo marks, in order of time
 * @param repeatStart whether it starts a repeat
 * @param end the bar line at its end
 */
public record PrintedMeasure(
    int index,
    Clef clef,
    ImmutableList<ClefChange> clefs,
    ImmutableList<PrintedNote> notes,
    ImmutableList<KeyChange> keys,
    ImmutableList<PrintedText> texts,
    boolean repeatStart,
    Bar end) {

  /**
   * A change of clef within a measure.
   *
   * @param onset time in quarter notes from the start of the measure, above 0
   * @param clef the new clef
   */
  public record ClefChange(BigFraction onset, Clef clef) {}

  /**
   * A change of key within a measure.
   *
   * @param onset time in quarter notes from the start of the measure, above 0
   * @param before number of sharps before, negative for flats
   * @param fifths number of sharps after, negative for flats
   */
  public record KeyChange(BigFraction onset, int before, int fifths) {}

  /** A bar line. */
  public enum Bar {
    SINGLE,
    DOUBLE,
    FINAL,
    REPEAT
  }

  /** The clef at a time in quarter notes from the start of the measure. */
  public Clef clefAt(BigFraction onset) {
    Clef current = clef;
    for (ClefChange change : clefs) {
      if (change.onset().compareTo(onset) <= 0) {
        current = change.clef();
      }
    }
    return current;
  }

  /**
   * The key signature at a time: number of sharps, negative for flats.
   *
   * @param onset time in quarter notes from the start of the measure
   * @param atStart the key signature at the start of the measure
   */
  public int fifthsAt(BigFraction onset, int atStart) {
    int current = atStart;
    for (KeyChange change : keys) {
      if (change.onset().compareTo(onset) <= 0) {
        current = change.fifths();
      }
    }
    return current;
  }
}
