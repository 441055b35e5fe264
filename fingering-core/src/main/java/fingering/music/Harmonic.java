package fingering.music;

import fingering.tables.Pitch;
import java.util.Optional;

/**
 * The notation of a harmonic in a part, except for its sounding pitch.
 *
 * @param kind natural or artificial
 * @param touched the pitch that a note stopped at the touched place would sound; empty if only the
 *     sounding pitch is printed
 * @param stopped the sounding pitch of the stopped note (artificial) or of the open string
 *     (natural); empty if not printed
 */
public record Harmonic(Kind kind, Optional<Pitch> touched, Optional<Pitch> stopped) {
  /** Natural or artificial. */
  public enum Kind {
    /** A finger touches a node of the open string. */
    NATURAL,
    /** A finger or the thumb stops a note, and another finger touches a node above it. */
    ARTIFICIAL
  }

  /** A natural harmonic of which only the sounding pitch is printed. */
  public static final Harmonic NATURAL =
      new Harmonic(Kind.NATURAL, Optional.empty(), Optional.empty());

  /**
   * Checks the components.
   *
   * @throws IllegalArgumentException if an artificial harmonic lacks its stopped or touched note
   */
  public Harmonic {
    if (kind == Kind.ARTIFICIAL && (stopped.isEmpty() || touched.isEmpty())) {
      throw new IllegalArgumentException(
          "an artificial harmonic needs its stopped and its touched note");
    }
  }
}
