package fingering.tempo;

import fingering.music.Place;
import fingering.music.Tempo;
import java.util.Optional;

/**
 * What keeps a place of a plan from going faster at ease.
 *
 * @param moment index in the passage of the moment that it leads to, or of the trilled one, from 0
 * @param place where that is
 * @param first where it begins: at the first note of a run, otherwise the same place
 * @param last where it ends: at the last note of a run, otherwise the same place
 * @param marked the tempo in force there
 * @param cause what it is
 * @param says the same in words: {@code shift from 1st to 3rd in a sixteenth}
 * @param neededMicros the least time it takes, in microseconds, over 0
 * @param freeMicros the time it has at the tempo in force, in microseconds, 0 or more
 */
public record TempoLimit(
    int moment,
    Place place,
    Place first,
    Place last,
    Tempo marked,
    LimitCause cause,
    String says,
    long neededMicros,
    long freeMicros) {

  /**
   * Checks the components.
   *
   * @throws IllegalArgumentException if the time needed is not over 0, or the free time below 0
   */
  public TempoLimit {
    if (neededMicros <= 0 || freeMicros < 0) {
      throw new IllegalArgumentException(
          "a limit of " + neededMicros + " against " + freeMicros + " microseconds in " + place);
    }
  }

  /** The measures as printed in which it lies: {@code 14}, and of a run {@code 13–14}. */
  public String measures() {
    return first.measureIndex() == last.measureIndex()
        ? first.measure()
        : first.measure() + "–" + last.measure();
  }

  /** Whether it is a run that has a measure in common with another. */
  boolean shares(TempoLimit other) {
    return cause == LimitCause.RUN
        && other.cause == LimitCause.RUN
        && first.measureIndex() <= other.last.measureIndex()
        && other.first.measureIndex() <= last.measureIndex();
  }

  /** The highest tempo at ease as a multiple of that in force: 1 where it is just at ease. */
  public double factor() {
    return (double) freeMicros / neededMicros;
  }

  /** The highest tempo at ease, rounded down; empty where it lies above every metronome mark. */
  public Optional<Tempo> tempo() {
    return MetronomeMarks.atMost(marked, factor());
  }
}
