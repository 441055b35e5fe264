package fingering.music.print;

import fingering.music.Place;

/**
 * What a score says about the order of playing for its playback, beside the printed words and signs
 * (MusicXML 4.0, {@code sound}).
 *
 * @param kind what to do, or where to go
 * @param place the time at which it holds
 * @param name the name that a jump and its target share; other kinds have any text
 */
public record JumpMark(Kind kind, Place place, String name) {

  /** A kind of jump or target. */
  public enum Kind {
    /** Go back to the beginning of the movement. */
    DA_CAPO,
    /** Go back to the segno. */
    DAL_SEGNO,
    /** Go on at the coda, the second time. */
    TO_CODA,
    /** The end, the second time. */
    FINE,
    SEGNO,
    CODA
  }
}
