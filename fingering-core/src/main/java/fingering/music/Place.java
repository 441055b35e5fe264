package fingering.music;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A place in the part, as a player finds it.
 *
 * @param measureIndex index of the measure in the part, from 0
 * @param measure the measure's number as printed
 * @param onset quarter notes from the start of the measure, 0 or more
 * @param beat the beat as a player counts it, from 1 (in 6/8 each eighth counts one)
 */
public record Place(int measureIndex, String measure, BigFraction onset, BigFraction beat) {

  /** The beat in short decimals: 1, 2.5, 3.33. */
  public String beatText() {
    return new java.math.BigDecimal(beat.doubleValue())
        .setScale(2, java.math.RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  /** As in a sentence: {@code measure 12, beat 2.5}. */
  @Override
  public String toString() {
    return "measure " + measure + ", beat " + beatText();
  }
}
