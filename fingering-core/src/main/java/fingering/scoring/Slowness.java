package fingering.scoring;

import fingering.music.Moment;

/** How slowly music goes, as far as it matters to the rules of sound. */
final class Slowness {
  /** Music whose notes last no longer on the average does not sing, in microseconds. */
  private static final long SINGS = 150_000;

  private static final long HUNDREDTH = 10_000;

  private Slowness() {}

  /** Hundredths of a second by which the notes around are longer than those of passage work. */
  static long slowness(Moment moment) {
    return Math.max(0, moment.meanNoteMicros() - SINGS) / HUNDREDTH;
  }
}
