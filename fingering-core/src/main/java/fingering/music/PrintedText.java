package fingering.music;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Text or a sign printed at a staff.
 *
 * @param kind the kind of text
 * @param text the text, such as {@code sf}, {@code pizz.} or {@code quarter=96}; not empty
 * @param place the place in the music
 * @param start the same as a time in quarter notes from the start of the part
 */
public record PrintedText(Kind kind, String text, Place place, BigFraction start) {
  /** A kind of text. */
  public enum Kind {
    /** A dynamic: {@code mf}, {@code sfz}. */
    DYNAMIC,
    /** Words. */
    WORDS,
    /** A metronome mark. */
    TEMPO,
    /** A sign to put on or take off the mute. */
    MUTE,
    /** A segno or coda sign. */
    JUMP
  }
}
