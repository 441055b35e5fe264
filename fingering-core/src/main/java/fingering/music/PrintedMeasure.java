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
 * @param texts words, dynamics and tempi over and under it, in order of time
 * @param repeatStart whether a repeat begins with it
 * @param end the bar line at its end
 */
public record PrintedMeasure(
    int index,
    Clef clef,
    ImmutableList<ClefChange> clefs,
    ImmutableList<PrintedNote> notes,
    ImmutableList<Text> texts,
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
   * Something in letters.
   *
   * @param onset quarter notes from the start of the measure
   * @param kind what it is
   * @param text what is printed
   */
  public record Text(BigFraction onset, Kind kind, String text) {}

  /** Kinds of text at a staff. */
  public enum Kind {
    WORDS,
    DYNAMIC,
    TEMPO
  }

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
}
