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
 * @param wedges the hairpins that touch them, in order
 */
public record PrintedPart(
    ImmutableList<PrintedMeasure> measures,
    ImmutableList<Slur> slurs,
    ImmutableList<Wedge> wedges) {

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
   * @param start quarter notes from the start of the part
   * @param end quarter notes from the start of the part, after the start
   * @param louder whether it opens
   */
  public record Wedge(BigFraction start, BigFraction end, boolean louder) {}

  /** The same as far as it concerns some measures, by index in the part, and one voice or all. */
  public PrintedPart only(int first, int last, Optional<String> voice) {
    ImmutableList<PrintedMeasure> kept =
        measures.stream()
            .filter(measure -> measure.index() >= first && measure.index() <= last)
            .map(measure -> inVoice(measure, voice))
            .collect(ImmutableList.toImmutableList());
    return new PrintedPart(
        kept,
        slurs.stream()
            .filter(slur -> slur.to().measure() >= first && slur.from().measure() <= last)
            .collect(ImmutableList.toImmutableList()),
        wedges);
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
        measure.texts(),
        measure.repeatStart(),
        measure.end());
  }
}
