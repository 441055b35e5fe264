package fingering.practice;

import com.google.common.collect.ImmutableList;
import fingering.music.Tempo;
import fingering.tables.FingeringException;
import java.time.LocalDate;

/**
 * What a day of the ladder asks for.
 *
 * @param date the date
 * @param kind what kind of day it is
 * @param steps the tempi to play at, the slowest first; empty on a day of rest
 * @param full how often to play it through at the last tempo of the whole ladder besides, 0 or more
 */
public record PracticeDay(LocalDate date, Kind kind, ImmutableList<Tempo> steps, int full) {
  /** Kinds of days. */
  public enum Kind {
    /** A step further, or the same once more. */
    PRACTICE,
    /** No practice. */
    REST,
    /** The day before: nothing new. */
    EVE,
    /** The day itself. */
    DAY
  }

  /**
   * Checks the steps.
   *
   * @throws FingeringException if they do not rise
   */
  public PracticeDay {
    for (int i = 1; i < steps.size(); i++) {
      if (steps.get(i - 1).perMinute().compareTo(steps.get(i).perMinute()) >= 0) {
        throw new FingeringException("the steps of " + date + " do not rise");
      }
    }
  }

  /**
   * The tempo to begin with.
   *
   * @throws IndexOutOfBoundsException on a day of rest, which has none
   */
  public Tempo start() {
    return steps.get(0);
  }

  /**
   * The fastest tempo of the day.
   *
   * @throws IndexOutOfBoundsException on a day of rest, which has none
   */
  public Tempo top() {
    return steps.get(steps.size() - 1);
  }
}
