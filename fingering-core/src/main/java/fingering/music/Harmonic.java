package fingering.music;

import fingering.tables.Pitch;
import java.util.Optional;

/**
 * What a part prints of a harmonic besides its sound.
 *
 * @param kind on the open string, or over a stopped note
 * @param touched the pitch of the place that is touched, as if stopped there and as it would sound;
 *     empty where only the sound is printed
 * @param stopped the sounding pitch of what is stopped (artificial) or of the open string
 *     (natural); empty where it is not printed
 */
public record Harmonic(Kind kind, Optional<Pitch> touched, Optional<Pitch> stopped) {
  /** How the string is shortened. */
  public enum Kind {
    /** A node of the open string is touched. */
    NATURAL,
    /** One finger, or the thumb, stops a note; another touches a node above it. */
    ARTIFICIAL
  }

  /** A natural harmonic of which the part prints only the sound. */
  public static final Harmonic NATURAL =
      new Harmonic(Kind.NATURAL, Optional.empty(), Optional.empty());

  /**
   * Checks the components.
   *
   * @throws IllegalArgumentException if an artificial harmonic lacks its stopped or its touched
   *     note
   */
  public Harmonic {
    if (kind == Kind.ARTIFICIAL && (stopped.isEmpty() || touched.isEmpty())) {
      throw new IllegalArgumentException(
          "an artificial harmonic needs its stopped and its touched note");
    }
  }
}
