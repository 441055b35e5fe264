package fingering.music;

import fingering.tables.Pitch;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Marks printed at a note.
 *
 * @param trill the upper note, at sounding pitch, of a trill, shake, turn or upper mordent; empty
 *     if there is none
 * @param accent whether the note has an accent or marcato
 * @param harmonic the harmonic; empty for an ordinary note
 * @param leftPlucked whether the left hand plucks the string
 * @param finger the printed finger, "0" to "4" or "T"; empty if there is none
 * @param string the number of the printed string, 1 for the highest; empty if there is none
 */
public record Marks(
    Optional<Pitch> trill,
    boolean accent,
    Optional<Harmonic> harmonic,
    boolean leftPlucked,
    Optional<String> finger,
    OptionalInt string) {

  /** No marks. */
  public static final Marks NONE =
      new Marks(
          Optional.empty(), false, Optional.empty(), false, Optional.empty(), OptionalInt.empty());

  /** The same marks with another upper note of a trill, or none. */
  public Marks withTrill(Optional<Pitch> upper) {
    return new Marks(upper, accent, harmonic, leftPlucked, finger, string);
  }

  /** The same marks with a harmonic. */
  public Marks withHarmonic(Harmonic other) {
    return new Marks(trill, accent, Optional.of(other), leftPlucked, finger, string);
  }

  /** The same marks with left-hand pizzicato. */
  public Marks withLeftPlucked() {
    return new Marks(trill, accent, harmonic, true, finger, string);
  }

  /** The same marks with another printed finger, or none. */
  public Marks withFinger(Optional<String> printed) {
    return new Marks(trill, accent, harmonic, leftPlucked, printed, string);
  }

  /**
   * These marks and those of another printed form of the note; in conflicts these take precedence.
   */
  public Marks and(Marks other) {
    return new Marks(
        trill.or(other::trill),
        accent || other.accent,
        harmonic.or(other::harmonic),
        leftPlucked || other.leftPlucked,
        finger.or(other::finger),
        string.isPresent() ? string : other.string);
  }
}
