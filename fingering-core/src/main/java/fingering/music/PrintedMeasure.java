package fingering.music;

import com.google.common.collect.ImmutableList;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A measure as it is printed.
 *
 * @param index index in the part, from 0
 * @param clef the clef in force at its beginning
 * @param clefs changes of clef within it, in order
 * @param notes its notes and rests, in document order
 * @param keys changes of key within it, in order
 * @param texts words, dynamics and tempi over and under it, in order of time
 * @param repeatStart whether a repeat begins with it
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
   * @param onset quarter notes from the start of the measure, over 0
   * @param clef the clef from there on
   */
  public record ClefChange(BigFraction onset, Clef clef) {}

  /**
   * A change of key within a measure.
   *
   * @param onset quarter notes from the start of the measure, over 0
   * @param before sharps, or flats below 0, until there
   * @param fifths sharps, or flats below 0, from there on
   */
  public record KeyChange(BigFraction onset, int before, int fifths) {}

  /** Bar lines. */
  public enum Bar {
    SINGLE,
    DOUBLE,
    FINAL,
    REPEAT
  }

  /** The clef in force at a time, in quarter notes from the start of the measure. */
  public Clef clefAt(BigFraction onset) {
    Clef inForce = clef;
    for (ClefChange change : clefs) {
      if (change.onset().compareTo(onset) <= 0) {
        inForce = change.clef();
      }
    }
    return inForce;
  }

  /**
   * The key in force at a time.
   *
   * @param onset quarter notes from the start of the measure
   * @param atStart sharps, or flats below 0, at the beginning of the measure
   */
  public int fifthsAt(BigFraction onset, int atStart) {
    int inForce = atStart;
    for (KeyChange change : keys) {
      if (change.onset().compareTo(onset) <= 0) {
        inForce = change.fifths();
      }
    }
    return inForce;
  }
}
