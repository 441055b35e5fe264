package fingering.musicxml.reading;

import fingering.music.Tempo;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A tempo at its time in a part. A metronome mark or the playback data of the file give it, or else
 * words.
 *
 * @param start quarter notes from the start of the part
 * @param measure index of its measure
 * @param number printed number of its measure
 * @param tempo the tempo from there on
 * @param playback whether it comes from the playback data of the file
 * @param words the words that give it; empty if a number does
 * @param change whether the words only change the tempo before: più mosso
 */
record PlacedTempo(
    BigFraction start,
    int measure,
    String number,
    Tempo tempo,
    boolean playback,
    String words,
    boolean change) {

  /** Returns whether words give the tempo. */
  boolean worded() {
    return !words.isEmpty();
  }
}
