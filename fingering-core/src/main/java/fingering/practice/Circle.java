package fingering.practice;

import fingering.music.Place;

/**
 * A sign or word to circle in the part before playing.
 *
 * @param kind its kind
 * @param place its place
 * @param text what is there, and what to do about it
 */
public record Circle(Kind kind, Place place, String text) {
  /** Kinds of things to circle, the most easily overlooked first. */
  public enum Kind {
    /** A sudden, large change of dynamic. */
    SUDDEN("Sudden changes"),
    /** A long crescendo or diminuendo. */
    LONG_HAIRPIN("Long hairpins"),
    /** A change for the hands: pizzicato, bow, mute or string. */
    CHANGE("Changes to prepare"),
    /** A shift of the chosen plan. */
    SHIFT("Shifts"),
    /** An accidental outside the key, one that still holds in its measure, or a new clef. */
    READING("Accidentals and clefs"),
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

    /** Returns the heading of a list of this kind. */
    public String heading() {
      return heading;
    }
  }
}
