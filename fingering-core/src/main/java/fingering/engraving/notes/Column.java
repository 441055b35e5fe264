package fingering.engraving.notes;

import com.google.common.collect.ImmutableList;
import fingering.music.print.Clef;
import fingering.music.print.PrintedMeasure.KeyChange;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Notes and rests that begin together.
 *
 * @param onset time in quarter notes from the start of the measure
 * @param grace whether they are grace notes before that time
 * @param chords the chords of all voices, the upper voice first
 * @param clef a change of clef before it
 * @param key a change of key before it
 */
public record Column(
    BigFraction onset,
    boolean grace,
    ImmutableList<Chord> chords,
    Optional<Clef> clef,
    Optional<KeyChange> key) {
  /** Whether there is nothing but rests. */
  public boolean rests() {
    return chords.stream().allMatch(Chord::rest);
  }
}
