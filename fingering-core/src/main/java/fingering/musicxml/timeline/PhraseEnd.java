package fingering.musicxml.timeline;

import fingering.music.Measure;
import fingering.musicxml.element.Quarters;
import fingering.musicxml.element.WrittenNote;
import fingering.musicxml.timeline.PartTimeline.Slot;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Finds the rest that ends a phrase, and with it the effect of words.
 *
 * @param start the position of the words, in quarter notes from the start of the part
 * @param until the end of their effect without a rest
 * @param voice the voice that they apply to, empty for all
 */
record PhraseEnd(BigFraction start, BigFraction until, String voice) {
  /** The shortest rest that ends a phrase: a quarter note. */
  private static final BigFraction QUARTER = BigFraction.ONE;

  /** The end of a part, in quarter notes from its start. */
  static BigFraction ofPart(List<Measure> measures) {
    Measure last = measures.get(measures.size() - 1);
    return last.start().add(last.length());
  }

  /**
   * The start of the first rest that ends the phrase; empty if there is none.
   *
   * @param whole whether only a rest of a whole measure ends it
   */
  Optional<BigFraction> rest(boolean whole, List<Slot> slots, List<Measure> measures) {
    Optional<BigFraction> sounded = Optional.empty();
    for (Slot slot : slots) {
      for (WrittenNote note : slot.notes()) {
        if (!note.within(start, until, voice)) {
          continue;
        }
        if (sounded.isPresent()) {
          BigFraction shortest = whole ? measures.get(note.measure()).length() : QUARTER;
          if (Quarters.compare(note.start(), sounded.get().add(shortest)) >= 0) {
            return sounded;
          }
        }
        BigFraction end = note.end();
        sounded =
            Optional.of(sounded.filter(before -> Quarters.compare(before, end) > 0).orElse(end));
      }
    }
    return Optional.empty();
  }
}
