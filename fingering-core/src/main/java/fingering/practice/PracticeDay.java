package fingering.practice;

import com.google.common.collect.ImmutableList;
import fingering.music.Tempo;
import java.time.LocalDate;

/**
 * One day of a ladder.
 *
 * @param date the date
 * @param kind the kind of day
 * @param steps the tempi to play at, the slowest first; empty on a rest day
 * @param runThroughs how many times to play the piece through at the last tempo of the ladder,
 *     after the steps; 0 or more
 */
public record PracticeDay(LocalDate date, Kind kind, ImmutableList<Tempo> steps, int runThroughs) {
  /** Kinds of days. */
  public enum Kind {
    /** A day with steps up to the same tempo as before, or one step higher. */
    PRACTICE,
    /** No practice. */
    REST,
    /** The day before the performance: nothing new. */
    EVE,
    /** The day of the performance. */
    DAY
  }

  /**
   * Checks the steps.
   *
   * @throws IllegalArgumentException if they do not rise
   */
  public PracticeDay {
    for (int i = 1; i < steps.size(); i++) {
      if (steps.get(i - 1).perMinute().compareTo(steps.get(i).perMinute()) >= 0) {
        throw new IllegalArgumentException("the steps of " + date + " do not rise");
      }
    }
  }

  /**
   * Returns the tempo to begin with.
   *
   * @throws IndexOutOfBoundsException on a rest day, which has no steps
   */
  public Tempo start() {
    return steps.get(0);
  }

  /**
   * Returns the fastest tempo of the day.
   *
   * @throws IndexOutOfBoundsException on a rest day, which has no steps
   */
  public Tempo top() {
    return steps.get(steps.size() - 1);
  }
}
