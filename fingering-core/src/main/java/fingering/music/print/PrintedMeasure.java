package fingering.music.print;

import com.google.common.collect.ImmutableList;
import java.util.Optional;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A measure as printed. Its number is in the {@linkplain fingering.music.Measure measure} of the
 * passage.
 *
 * @param index index in the part, from 0
 * @param numbered whether it counts; the number of a pickup, or of the second part of a divided
 *     measure, is not printed
 * @param clef the clef at its start. If it differs from the last one of the measure before, it is
 *     usually printed at the end of that measure, before the bar line
 * @param clefAfterBar whether the clef at its start is printed after the bar line
 * @param clefs changes of clef within it, in order of time. One at its very end is printed before
 *     the bar line, and holds in the next measure
 * @param key the change of key at its start; the first key of a part changes from no sharps
 * @param keys changes of key within it, in order of time
 * @param times the time signatures printed in it, in order of time
 * @param multipleRest number of measures of the multiple-measure rest that begins here; 0 if none
 *     does
 * @param notes notes and rests, in document order
 * @param texts words, dynamics and tempo marks, in order of time
 * @param repeatStart whether it starts a repeat
 * @param bars bar lines within it, in order of time
 * @param end the bar line at its end
 * @param repeatTimes how often a repeat that ends there is played in all; 2 unless the score says
 *     more
 * @param fermataAtEnd whether there is a fermata over that bar line
 */
public record PrintedMeasure(
    int index,
    boolean numbered,
    Clef clef,
    boolean clefAfterBar,
    ImmutableList<ClefChange> clefs,
    Optional<KeyChange> key,
    ImmutableList<KeyChange> keys,
    ImmutableList<TimeChange> times,
    int multipleRest,
    ImmutableList<PrintedNote> notes,
    ImmutableList<PrintedText> texts,
    boolean repeatStart,
    ImmutableList<InnerBar> bars,
    Bar end,
    int repeatTimes,
    boolean fermataAtEnd) {

  /**
   * A change of clef within a measure.
   *
   * @param onset time in quarter notes from the start of the measure, above 0
   * @param clef the new clef
   */
  public record ClefChange(BigFraction onset, Clef clef) {}

  /**
   * A change of key.
   *
   * @param onset time in quarter notes from the start of the measure
   * @param before number of sharps before, negative for flats
   * @param fifths number of sharps after, negative for flats
   * @param cancelled whether the score asks for naturals that cancel the old key. Without them,
   *     naturals are usual only where no sharps or flats follow
   */
  public record KeyChange(BigFraction onset, int before, int fifths, boolean cancelled) {}

  /**
   * A time signature and its position.
   *
   * @param onset time in quarter notes from the start of the measure
   * @param sign the time signature
   */
  public record TimeChange(BigFraction onset, TimeSign sign) {}

  /**
   * A bar line within a measure.
   *
   * @param onset time in quarter notes from the start of the measure
   * @param bar the bar line
   * @param repeatStart whether it starts a repeat
   */
  public record InnerBar(BigFraction onset, Bar bar, boolean repeatStart) {}

  /** A bar line. */
  public enum Bar {
    SINGLE,
    DOUBLE,
    /** A thin and a thick line, or a thick one. */
    FINAL,
    /** The end of a repeat. */
    REPEAT,
    DASHED,
    DOTTED,
    /** A short stroke through the top line of the staff. */
    TICK,
    /** A line between the second and the fourth line of the staff. */
    SHORT,
    /** No bar line is printed. */
    NONE
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

  /** The same measure with only some of its notes. */
  public PrintedMeasure withNotes(Predicate<PrintedNote> wanted) {
    return with(notes.stream().filter(wanted).collect(ImmutableList.toImmutableList()), texts, end);
  }

  /** The same measure with these texts instead of its own, in order of time. */
  public PrintedMeasure withTexts(ImmutableList<PrintedText> others) {
    return with(notes, others, end);
  }

  /** The same measure with another bar line at its end. */
  public PrintedMeasure withEnd(Bar other) {
    return with(notes, texts, other);
  }

  private PrintedMeasure with(
      ImmutableList<PrintedNote> someNotes, ImmutableList<PrintedText> otherTexts, Bar otherEnd) {
    return new PrintedMeasure(
        index,
        numbered,
        clef,
        clefAfterBar,
        clefs,
        key,
        keys,
        times,
        multipleRest,
        someNotes,
        otherTexts,
        repeatStart,
        bars,
        otherEnd,
        repeatTimes,
        fermataAtEnd);
  }
}
