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

  /** The same marks at a note that the left hand plucks. */
  public Marks withLeftPlucked() {
    return new Marks(trill, accent, harmonic, true, finger, string);
  }
}
