package fingering.music;

import com.google.common.collect.ImmutableList;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a reader sees on the staff of a part, or of some measures of it. Keys and meters are told by
 * the {@link Measure measures} of the passage.
 *
 * @param measures the measures, in order
 * @param slurs the slurs that touch them, in document order of their ends
 * @param wedges the hairpins that touch them, in order of their beginnings
 * @param endings the endings of repeats that touch them, in order
 */
public record PrintedPart(
    ImmutableList<PrintedMeasure> measures,
    ImmutableList<Slur> slurs,
    ImmutableList<Wedge> wedges,
    ImmutableList<Ending> endings) {

  /**
   * A slur.
   *
   * @param from the note at which it begins
   * @param to the note at which it ends
   */
  public record Slur(NoteAddress from, NoteAddress to) {}

  /**
   * A hairpin.
   *
   * @param from where it begins
   * @param to where it ends
   * @param start the beginning in quarter notes from the start of the part
   * @param end the end in quarter notes from the start of the part, after the start
   * @param louder whether it opens
   */
  public record Wedge(Place from, Place to, BigFraction start, BigFraction end, boolean louder) {}

  /**
   * An ending of a repeat.
   *
   * @param first index of the measure with which it begins
   * @param last index of the measure with which it ends
   * @param number how it is printed: {@code 1}, {@code 1, 2}
   * @param closed whether its bracket is closed at the end
   */
  public record Ending(int first, int last, String number, boolean closed) {}

  /** Words, dynamics and other texts, in order of time. */
  public ImmutableList<PrintedText> texts() {
    return measures.stream()
        .flatMap(measure -> measure.texts().stream())
        .collect(ImmutableList.toImmutableList());
  }

  /** The same as far as it concerns some measures, by index in the part, and one voice or all. */
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
