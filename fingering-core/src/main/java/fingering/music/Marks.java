package fingering.music;

import fingering.tables.Pitch;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What is printed at a note besides its pitch and length.
 *
 * @param trill the upper note, as it sounds, of a trill, shake, turn or upper mordent
 * @param accent an accent or marcato
 * @param harmonic how the note is a harmonic; empty where it is none
 * @param leftPlucked whether the left hand plucks the string
 * @param finger the finger printed: "0" to "4" or "T"
 * @param string the string printed, 1 being the highest
 */
public record Marks(
    Optional<Pitch> trill,
    boolean accent,
    Optional<Harmonic> harmonic,
    boolean leftPlucked,
    Optional<String> finger,
    OptionalInt string) {

  /** No mark at all. */
  public static final Marks NONE =
      new Marks(
          Optional.empty(), false, Optional.empty(), false, Optional.empty(), OptionalInt.empty());

  /** The same marks with that upper note of a trill, or with none. */
  public Marks withTrill(Optional<Pitch> upper) {
    return new Marks(upper, accent, harmonic, leftPlucked, finger, string);
  }

  /** The same marks at a note that is a harmonic so. */
  public Marks withHarmonic(Harmonic how) {
    return new Marks(trill, accent, Optional.of(how), leftPlucked, finger, string);
  }

  /** The same marks at a note that the left hand plucks. */
  public Marks withLeftPlucked() {
    return new Marks(trill, accent, harmonic, true, finger, string);
  }

  /** The same marks with that finger printed, or with none. */
  public Marks withFinger(Optional<String> printed) {
    return new Marks(trill, accent, harmonic, leftPlucked, printed, string);
  }

  /** These marks and those of another print of the note; where both say one thing, these count. */
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
