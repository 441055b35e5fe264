package fingering.practice;

import com.google.common.collect.ImmutableSet;
import fingering.music.Tempo;
import fingering.tables.FingeringException;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * What a tempo ladder leads to.
 *
 * @param clean the last tempo that was clean, 10 a minute or more, in the unit of the goal
 * @param goal the tempo to be reached, 10 a minute or more
 * @param first the first day of practice
 * @param by the day on which it is played; not before the first, and within two years of it
 * @param rest days of the week without practice; not all of them
 */
public record LadderRequest(
    Tempo clean, Tempo goal, LocalDate first, LocalDate by, ImmutableSet<DayOfWeek> rest) {
  private static final BigDecimal SLOWEST = BigDecimal.TEN;
  private static final int MOST_DAYS = 731;

  /**
   * Checks the request.
   *
   * @throws FingeringException if it cannot be met; the message is one sentence
   */
  public LadderRequest {
    if (by.isBefore(first)) {
      throw new FingeringException(
          "The day itself, %s, lies before %s, the first day of practice: give a later day."
              .formatted(by, first));
    }
    if (ChronoUnit.DAYS.between(first, by) > MOST_DAYS) {
      throw new FingeringException(
          "From %s to %s are more than two years: plan a nearer day.".formatted(first, by));
    }
    if (rest.size() == DayOfWeek.values().length) {
      throw new FingeringException(
          "All seven days of the week are rest days: leave one for practice.");
    }
    refuseSlow(clean);
    refuseSlow(goal);
    clean = BeatConversion.in(clean, goal.unit());
  }

  private static void refuseSlow(Tempo tempo) {
    if (tempo.perMinute().compareTo(SLOWEST) < 0) {
      throw new FingeringException(
          "A tempo of %s is too slow to practise by: count a shorter note value.".formatted(tempo));
    }
  }
}
