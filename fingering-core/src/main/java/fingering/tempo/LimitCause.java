package fingering.tempo;

import java.util.Locale;

/** The movement that limits the tempo at a place. */
public enum LimitCause {
  /** The hand moves to another position. */
  SHIFT,
  /** A finger slides to another note without a shift. */
  SLIDE,
  /** One finger follows another. */
  FINGERS,
  /** The fourth finger follows the third, or the third the fourth. */
  WEAK_FINGERS,
  /** A finger and the bow change together. */
  TOGETHER,
  /** A new bow stroke with the same fingers. */
  BOW,
  /** The bow crosses to the next string. */
  CROSSING,
  /** The bow skips a string. */
  SKIP,
  /** A finger moves to another string. */
  HOP,
  /** A finger stretches. */
  STRETCH,
  /** Several fingers are placed at once, or the bow has to break a chord. */
  CHORD,
  /** A trill. */
  TRILL,
  /** The string is plucked. */
  PIZZICATO,
  /** Grace notes. */
  GRACE_NOTES,
  /** Many notes in a row, each of which is comfortable by itself. */
  RUN;

  /** The name in JSON: lower case, with hyphens between words. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
