package fingering.music;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A measure of a part.
 *
 * @param index index in the part, from 0
 * @param number the measure number as printed
 * @param start start in quarter notes from the start of the part
 * @param length length of its content in quarter notes
 * @param fifths number of sharps of the key signature, negative for flats
 * @param beats upper number of the time signature
 * @param beatType lower number of the time signature, at least 1
 * @param rehearsal the rehearsal mark at its start; empty if there is none
 */
public record Measure(
    int index,
    String number,
    BigFraction start,
    BigFraction length,
    int fifths,
    int beats,
    int beatType,
    String rehearsal) {

  /**
   * Checks the components.
   *
   * @throws IllegalArgumentException if the index is below 0, or the lower number of the time
   *     signature below 1
   */
  public Measure {
    if (index < 0 || beatType < 1) {
      throw new IllegalArgumentException("measure %d in %d/%d".formatted(index, beats, beatType));
    }
  }

  /** The place at a time in quarter notes from the start of the measure. */
  public Place place(BigFraction onset) {
    BigFraction beat = onset.divide(BigFraction.of(4, beatType));
    return new Place(index, number, onset, beat.add(BigFraction.ONE));
  }
}
