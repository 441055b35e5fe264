package fingering.tempo;

import fingering.music.Place;
import fingering.music.Tempo;
import java.util.Optional;

/**
 * A place in a plan that limits the comfortable tempo.
 *
 * @param moment index in the passage, from 0, of the moment that the movement leads to, of the
 *     trilled moment, or of the middle of a run
 * @param place the place of that moment
 * @param first the place of the first note of a run; otherwise the same as {@code place}
 * @param last the place of the last note of a run; otherwise the same as {@code place}
 * @param marked the tempo in force there
 * @param cause the cause
 * @param crosses whether the bow crosses strings: for a run, at least as often as the hand shifts
 * @param text a description: {@code shift from 1st to 3rd in a sixteenth}
 * @param neededMicros the minimum time needed, in microseconds, above 0
 * @param freeMicros the time available at the tempo in force, in microseconds, 0 or more
 */
public record TempoLimit(
    int moment,
    Place place,
    Place first,
    Place last,
    Tempo marked,
    LimitCause cause,
    boolean crosses,
    String text,
    long neededMicros,
    long freeMicros) {

  /**
   * Checks the components.
   *
   * @throws IllegalArgumentException if the time needed is not above 0, or the time available is
   *     below 0
   */
  public TempoLimit {
    if (neededMicros <= 0 || freeMicros < 0) {
      throw new IllegalArgumentException(
          "a limit in " + place + " needs " + neededMicros + " of " + freeMicros + " microseconds");
    }
  }

  /** The numbers of its measures as printed: {@code 14}, or for a run {@code 13–14}. */
  public String measures() {
    return first.measuresTo(last);
  }

  /** Whether this and another limit are runs that have a measure in common. */
  boolean overlapsRun(TempoLimit other) {
    return cause == LimitCause.RUN
        && other.cause == LimitCause.RUN
        && first.measureIndex() <= other.last.measureIndex()
        && other.first.measureIndex() <= last.measureIndex();
  }

  /** The highest comfortable tempo as a multiple of the marked one. */
  public double factor() {
    return (double) freeMicros / neededMicros;
  }

  /** The highest comfortable tempo, rounded down; empty if it is above every metronome mark. */
  public Optional<Tempo> tempo() {
    return MetronomeMarks.atMost(marked, factor());
  }
}
