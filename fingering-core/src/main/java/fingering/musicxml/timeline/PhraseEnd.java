package fingering.musicxml.timeline;

import fingering.music.Measure;
import fingering.musicxml.element.Quarters;
import fingering.musicxml.element.WrittenNote;
import fingering.musicxml.timeline.PartTimeline.Slot;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Where what words ask for may end for a rest.
 *
 * @param start where the words stand, in quarter notes from the start of the part
 * @param until where they hold no more in any case
 * @param voice the voice they are for, empty for all
 */
record PhraseEnd(BigFraction start, BigFraction until, String voice) {
  /** A rest in which a phrase ends: a quarter note. */
  private static final BigFraction BREATH = BigFraction.ONE;

  /** The end of a part. */
  static BigFraction ofPart(List<Measure> measures) {
    Measure last = measures.get(measures.size() - 1);
    return last.start().add(last.length());
  }

  /**
   * Where the first rest begins that ends them.
   *
   * @param whole whether that takes the rest of a measure; a phrase ends in a shorter one
   */
  Optional<BigFraction> rest(boolean whole, List<Slot> slots, List<Measure> measures) {
    Optional<BigFraction> sounded = Optional.empty();
    for (Slot slot : slots) {
      for (WrittenNote note : slot.notes()) {
        if (!note.within(start, until, voice)) {
          continue;
        }
        if (sounded.isPresent()) {
          BigFraction breath = whole ? measures.get(note.measure()).length() : BREATH;
          if (Quarters.compare(note.start(), sounded.get().add(breath)) >= 0) {
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
