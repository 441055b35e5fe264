package fingering.music;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A measure of the part.
 *
 * @param index index in the part, from 0
 * @param number the number as printed
 * @param start quarter notes from the start of the part
 * @param length length in quarter notes, as filled
 * @param fifths sharps (positive) or flats (negative) of the key signature
 * @param beats upper figure of the meter
 * @param beatType lower figure of the meter
 * @param rehearsal the rehearsal mark at its start, empty where there is none
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

  /** The place of a time, in quarter notes from the start of the measure. */
  public Place place(BigFraction onset) {
    BigFraction beat = onset.divide(BigFraction.of(4, beatType));
    return new Place(index, number, onset, beat.add(BigFraction.ONE));
  }
}
