package fingering.practice;

import com.google.common.collect.ImmutableSet;
import fingering.music.Tempo;
import fingering.tables.FingeringException;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * The start and the goal of a tempo ladder. Mind the order of the two tempi: a clean tempo above
 * the goal is allowed, and makes a ladder that stays at the goal.
 *
 * @param clean the last clean tempo, 10 beats a minute or more; converted to the unit of the goal
 * @param goal the tempo to reach, 10 beats a minute or more
 * @param first the first day of practice
 * @param by the day of the performance; not before the first day, and within two years of it
 * @param rest days of the week without practice; not all seven
 */
public record LadderRequest(
    Tempo clean, Tempo goal, LocalDate first, LocalDate by, ImmutableSet<DayOfWeek> rest) {
  private static final BigDecimal SLOWEST = BigDecimal.TEN;
  private static final int MOST_DAYS = 731;

  /**
   * Checks the request, and converts the clean tempo.
   *
   * @throws FingeringException if a date, a tempo or the rest days are out of range; the message is
   *     one sentence
   */
  public LadderRequest {
    if (by.isBefore(first)) {
      throw new FingeringException(
          "The performance on %s is before the first day of practice, %s: choose a later date."
              .formatted(by, first));
    }
    if (ChronoUnit.DAYS.between(first, by) > MOST_DAYS) {
      throw new FingeringException(
          "From %s to %s is more than two years: choose an earlier date.".formatted(first, by));
    }
    if (rest.size() == DayOfWeek.values().length) {
      throw new FingeringException(
          "All seven days of the week are rest days: leave at least one for practice.");
    }
    refuseSlow(clean);
    refuseSlow(goal);
    clean = BeatConversion.in(clean, goal.unit());
  }

  private static void refuseSlow(Tempo tempo) {
    if (tempo.perMinute().compareTo(SLOWEST) < 0) {
      throw new FingeringException(
          "A tempo of %s is too slow to practise with: count in a shorter note value."
              .formatted(tempo));
    }
  }
}
