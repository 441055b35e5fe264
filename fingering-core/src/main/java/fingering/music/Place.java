package fingering.music;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A place in a part, as players name it.
 *
 * @param measureIndex index of the measure in the part, from 0
 * @param measure the measure number as printed
 * @param onset time in quarter notes from the start of the measure, 0 or more
 * @param beat the beat as players count it, 1 for the first; in 6/8 each eighth is a beat
 */
public record Place(int measureIndex, String measure, BigFraction onset, BigFraction beat) {

  /** The beat with at most two decimals: 1, 2.5, 3.33. */
  public String beatText() {
    return new BigDecimal(beat.doubleValue())
        .setScale(2, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  /** The numbers of the measures from this place to a later one: {@code 14}, {@code 13–14}. */
  public String measuresTo(Place last) {
    return measureIndex == last.measureIndex ? measure : measure + "–" + last.measure;
  }

  /** For use in a sentence: {@code measure 12, beat 2.5}. */
  @Override
  public String toString() {
    return "measure " + measure + ", beat " + beatText();
  }
}
