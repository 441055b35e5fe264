package fingering.lesson;

import fingering.music.Tempo;
import fingering.tables.FingeringException;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The day on which the student plays the excerpt, and the tempo then.
 *
 * @param date the day; empty if it is not known yet
 * @param tempo the opening tempo; empty if it is not decided yet
 */
public record Hearing(Optional<LocalDate> date, Optional<Tempo> tempo) {
  /**
   * Checks that something is known.
   *
   * @throws FingeringException if neither is given
   */
  public Hearing {
    if (date.isEmpty() && tempo.isEmpty()) {
      throw new FingeringException("a hearing has a date, a tempo or both");
    }
  }
}
