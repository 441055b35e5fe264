package fingering.music;

import com.google.common.collect.ImmutableList;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The printed staff of a part, or of some of its measures. Key and time signatures are in the
 * {@link Measure measures} of the passage.
 *
 * @param measures the measures, in order
 * @param slurs the slurs that overlap them, in document order of their ends
 * @param wedges the hairpins that overlap them, in order of their starts
 * @param endings the endings of repeats that overlap them, in order
 */
public record PrintedPart(
    ImmutableList<PrintedMeasure> measures,
    ImmutableList<Slur> slurs,
    ImmutableList<Wedge> wedges,
    ImmutableList<Ending> endings) {

  /**
   * A slur.
   *
   * @param from the note where it starts
   * @param to the note where it ends
   */
  public record Slur(NoteAddress from, NoteAddress to) {}

  /**
   * A hairpin.
   *
   * @param from the place where it starts
   * @param to the place where it ends
   * @param start start in quarter notes from the start of the part
   * @param end end in quarter notes from the start of the part, after the start
   * @param louder whether it is a crescendo
   */
  public record Wedge(Place from, Place to, BigFraction start, BigFraction end, boolean louder) {}

  /**
   * An ending of a repeat.
   *
   * @param first index of its first measure
   * @param last index of its last measure
   * @param number the printed number, for example {@code 1} or {@code 1, 2}
   * @param closed whether its bracket is closed at the end
   */
  public record Ending(int first, int last, String number, boolean closed) {}

  /** Words, dynamics and other texts of all measures, in order of time. */
  public ImmutableList<PrintedText> texts() {
    return measures.stream()
        .flatMap(measure -> measure.texts().stream())
        .collect(ImmutableList.toImmutableList());
  }

  /**
   * The same staff restricted to some measures, by index in the part, and to one voice if given.
   */
  public PrintedPart only(int first, int last, Optional<String> voice) {
    return new PrintedPart(
        measures.stream()
            .filter(measure -> measure.index() >= first && measure.index() <= last)
            .map(measure -> inVoice(measure, voice))
            .collect(ImmutableList.toImmutableList()),
        slurs.stream()
            .filter(slur -> slur.to().measure() >= first && slur.from().measure() <= last)
            .collect(ImmutableList.toImmutableList()),
        wedges.stream()
            .filter(w -> w.to().measureIndex() >= first && w.from().measureIndex() <= last)
            .collect(ImmutableList.toImmutableList()),
        endings.stream()
            .filter(ending -> ending.last() >= first && ending.first() <= last)
            .collect(ImmutableList.toImmutableList()));
  }

  private static PrintedMeasure inVoice(PrintedMeasure measure, Optional<String> voice) {
    if (voice.isEmpty()) {
      return measure;
    }
    return new PrintedMeasure(
        measure.index(),
        measure.clef(),
        measure.clefs(),
        measure.notes().stream()
            .filter(note -> note.voice().equals(voice.get()))
            .collect(ImmutableList.toImmutableList()),
        measure.keys(),
        measure.texts(),
        measure.repeatStart(),
        measure.end());
  }
}
