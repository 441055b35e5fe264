package fingering.scoring;

/**
 * The pace of the music, in the few classes that rules distinguish. The limits are common practice,
 * no source.
 */
public enum Pace {
  /** Notes of 0.25 s and more on average: there is time to vibrate and to place each finger. */
  SLOW(0),
  /** Between the two. */
  MODERATE(1),
  /** Notes shorter than 0.13 s on average: the hand plays patterns. */
  QUICK(2);

  private static final long SLOW_MICROS = 250_000;
  private static final long QUICK_MICROS = 130_000;

  private final int level;

  Pace(int level) {
    this.level = level;
  }

  /** How quick it is: 0 slow, 1 moderate, 2 quick. */
  public int level() {
    return level;
  }

  /** The class of a mean length of notes, in microseconds; 0 if it is not known. */
  static Pace of(long micros) {
    if (micros == 0) {
      return MODERATE;
    }
    return micros >= SLOW_MICROS ? SLOW : micros < QUICK_MICROS ? QUICK : MODERATE;
  }
}
