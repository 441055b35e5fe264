package fingering.abc.reading;

import fingering.abc.syntax.AbcException;
import fingering.abc.syntax.LineCursor;

/**
 * Counts the measures and notes of a tune. A few signs can stand for many measures, so a short file
 * could fill the memory. Not thread-safe.
 */
public final class TuneSize {
  private final long mostMeasures;
  private final long mostNotes;
  private long measures;
  private long notes;

  /**
   * Begins to count.
   *
   * @param mostMeasures the highest number of measures of all voices together
   * @param mostNotes the highest number of notes and rests of all voices together
   */
  public TuneSize(long mostMeasures, long mostNotes) {
    this.mostMeasures = mostMeasures;
    this.mostNotes = mostNotes;
  }

  /**
   * Counts a measure.
   *
   * @throws AbcException if there are too many
   */
  void measure(LineCursor place) {
    if (++measures > mostMeasures) {
      throw tooLarge(place, mostMeasures, "measures");
    }
  }

  /**
   * Counts notes or rests.
   *
   * @throws AbcException if there are too many
   */
  void notes(int count, LineCursor place) {
    notes += count;
    if (notes > mostNotes) {
      throw tooLarge(place, mostNotes, "notes");
    }
  }

  private static AbcException tooLarge(LineCursor place, long most, String what) {
    return place.error(
        "the tune has more than %d %s and is not read: check that it is a tune, split it if it is, or raise the limit '%s'."
            .formatted(most, what, what));
  }
}
