package fingering.music;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Something in letters at a staff.
 *
 * @param kind what it is
 * @param text how it is printed: {@code sf}, {@code pizz.}, {@code quarter=96}; not empty
 * @param place where it stands
 * @param start the same in quarter notes from the start of the part
 */
public record PrintedText(Kind kind, String text, Place place, BigFraction start) {
  /** Kinds of text. */
  public enum Kind {
    /** A letter for loudness, or several: {@code mf}, {@code sfz}. */
    DYNAMIC,
    /** Words. */
    WORDS,
    /** A metronome mark. */
    TEMPO,
    /** A mute is put on or taken off, by a sign. */
    MUTE,
    /** A segno or coda sign. */
    JUMP
  }
}
