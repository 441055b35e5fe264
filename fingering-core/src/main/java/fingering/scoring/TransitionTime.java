package fingering.scoring;

import fingering.music.Moment;

/**
 * The time between two successive moments, in multiples of half a millisecond. Rules do not see it:
 * a {@link TimedTransitionRule} says how much time a movement needs, and the scoring compares.
 *
 * @param sinceMicros microseconds from the start of the earlier moment to the start of the later
 *     one, rounded to the nearest multiple, at most one second
 * @param freeMicros microseconds in which the hand can shift unheard: the rest, and the end of the
 *     note before if it is detached; rounded up, at most one second
 */
public record TransitionTime(long sinceMicros, long freeMicros) {
  /** The cap on both times, in microseconds; every movement is faster. */
  public static final long MAX_MICROS = 1_000_000;

  /** The hand may use a quarter of a detached note (common practice). */
  private static final int DETACHED_DIVISOR = 4;

  /** The hand may use a tenth of a note under a slur (common practice). */
  private static final int SLURRED_DIVISOR = 10;

  /** Times are multiples of this, in microseconds. */
  private static final long TICK = 500;

  /** The time between two successive moments. */
  public static TransitionTime between(Moment before, Moment now) {
    long share = before.soundMicros() / (now.slurred() ? SLURRED_DIVISOR : DETACHED_DIVISOR);
    long since = now.startMicros() - before.startMicros() + TICK / 2;
    long free = now.restMicros() + share + TICK - 1;
    return new TransitionTime(roundedDown(since), roundedDown(free));
  }

  private static long roundedDown(long micros) {
    return Math.min(MAX_MICROS, micros / TICK * TICK);
  }

  /**
   * Microseconds available for leaving a grip.
   *
   * @param fromOpen whether the grip is only open strings: the hand can leave it as soon as it
   *     sounds
   */
  public long micros(boolean fromOpen) {
    return fromOpen ? sinceMicros : freeMicros;
  }

  /**
   * Units of time that are missing for a movement, rounded down.
   *
   * @param needed microseconds that the movement takes
   * @param fromOpen whether the grip that the hand leaves is only open strings
   */
  public long missing(TimedTransitionRule rule, long needed, boolean fromOpen) {
    long micros = micros(fromOpen);
    return needed > micros ? (needed - micros) / rule.unitMicros() : 0;
  }
}
