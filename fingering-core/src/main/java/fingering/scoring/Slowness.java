package fingering.scoring;

import fingering.music.Moment;

/** Measures how slow the music is, for the rules of sound. */
final class Slowness {
  /** Mean note length up to which music does not count as slow, in microseconds. */
  private static final long NOT_SLOW_MICROS = 150_000;

  private static final long HUNDREDTH_MICROS = 10_000;

  private Slowness() {}

  /** Hundredths of a second by which the mean length of the notes around exceeds 0.15 s. */
  static long of(Moment moment) {
    return Math.max(0, moment.surroundings().paceMicros() - NOT_SLOW_MICROS) / HUNDREDTH_MICROS;
  }
}
