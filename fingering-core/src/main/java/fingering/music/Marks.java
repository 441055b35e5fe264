package fingering.music;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * What is printed at a note besides its pitch and length.
 *
 * @param trill a trill, shake or turn that needs the finger above free
 * @param accent an accent or marcato
 * @param harmonic whether the note is a harmonic
 * @param finger the finger printed: "0" to "4" or "T"
 * @param string the string printed, 1 being the highest
 */
public record Marks(
    boolean trill, boolean accent, boolean harmonic, Optional<String> finger, OptionalInt string) {

  /** No mark at all. */
  public static final Marks NONE =
      new Marks(false, false, false, Optional.empty(), OptionalInt.empty());
}
