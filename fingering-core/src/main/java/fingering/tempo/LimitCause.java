package fingering.tempo;

import java.util.Locale;

/** What keeps a place from going faster. */
public enum LimitCause {
  /** The hand moves to another position. */
  SHIFT,
  /** A finger slides to another note without a shift of the hand. */
  SLIDE,
  /** One finger follows another. */
  FINGERS,
  /** The third and the fourth finger follow one another. */
  WEAK_FINGERS,
  /** Finger and bow change together. */
  TOGETHER,
  /** New strokes on a note that stays. */
  BOW,
  /** The bow goes to the next string. */
  CROSSING,
  /** The bow passes over a string. */
  SKIP,
  /** One finger hops to another string, or takes over the same place there. */
  HOP,
  /** A finger reaches out. */
  STRETCH,
  /** Several fingers are set at once, or the bow has to break a chord. */
  CHORD,
  /** A trill. */
  TRILL,
  /** The string is plucked. */
  PIZZICATO,
  /** Grace notes. */
  GRACE_NOTES,
  /** Many changes in a row, none of which would be too much by itself. */
  RUN;

  /** The name in data: lower case, words joined by hyphens. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
