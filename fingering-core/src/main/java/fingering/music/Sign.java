package fingering.music;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What is printed in a part besides its notes.
 *
 * @param kind what it is
 * @param text how it is printed: {@code sf}, {@code pizz.}; empty where it is drawn
 * @param place where it stands
 * @param start the same in quarter notes from the start of the part
 */
public record Sign(Kind kind, String text, Place place, BigFraction start) {
  /** Kinds of signs. */
  public enum Kind {
    /** A letter for loudness. */
    DYNAMIC,
    /** A hairpin that opens. */
    CRESCENDO,
    /** A hairpin that closes. */
    DIMINUENDO,
    /** The end of a hairpin. */
    HAIRPIN_END,
    /** Words. */
    WORDS,
    /** A metronome mark. */
    TEMPO,
    /** A mute is put on or taken off, as a sign. */
    MUTE,
    /** A repeat begins. */
    REPEAT_FROM,
    /** A repeat ends. */
    REPEAT,
    /** An ending of a repeat begins. */
    ENDING,
    /** A segno or coda sign. */
    JUMP
  }
}
