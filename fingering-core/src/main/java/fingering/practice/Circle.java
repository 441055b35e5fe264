package fingering.practice;

import fingering.music.Place;

/**
 * Something to circle in the part before playing.
 *
 * @param kind what it is
 * @param place where it stands
 * @param says what to see there, and what to do
 */
public record Circle(Kind kind, Place place, String says) {
  /** Kinds of things to circle, in the order in which to look for them. */
  public enum Kind {
    /** A dynamic that changes at once and by far. */
    SUDDEN("Sudden changes"),
    /** A long crescendo or diminuendo. */
    LONG_HAIRPIN("Long hairpins"),
    /** Plucking, bow, mute, string: something in the hands changes. */
    CHANGE("Changes to make in time"),
    /** Any other dynamic. */
    DYNAMIC("Other dynamics"),
    /** Accented notes. */
    ACCENT("Accents"),
    /** Tempo marks and other words. */
    WORDS("Tempo and words"),
    /** Repeats, endings and jumps. */
    REPEAT("Repeats");

    private final String heading;

    Kind(String heading) {
      this.heading = heading;
    }

    /** The kind in print. */
    public String heading() {
      return heading;
    }
  }
}
