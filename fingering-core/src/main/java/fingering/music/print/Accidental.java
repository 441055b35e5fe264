package fingering.music.print;

/**
 * A printed accidental.
 *
 * @param kind the sign
 * @param courtesy whether it only reminds the player of what holds anyway
 * @param parentheses whether it is printed in parentheses or brackets
 */
public record Accidental(Kind kind, boolean courtesy, boolean parentheses) {

  /** The sign of an accidental. */
  public enum Kind {
    SHARP(1),
    FLAT(-1),
    NATURAL(0),
    DOUBLE_SHARP(2),
    DOUBLE_FLAT(-2),
    /** A natural before a sharp: one sharp is left of two. */
    NATURAL_SHARP(1),
    /** A natural before a flat: one flat is left of two. */
    NATURAL_FLAT(-1);

    private final int semitones;

    Kind(int semitones) {
      this.semitones = semitones;
    }

    /** The semitones by which it alters the natural note, -2 to 2. */
    public int semitones() {
      return semitones;
    }
  }

  /** The semitones by which it alters the natural note, -2 to 2. */
  public int semitones() {
    return kind.semitones();
  }
}
