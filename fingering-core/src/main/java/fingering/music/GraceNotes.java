package fingering.music;

/**
 * The time of grace notes. They are played fast, on the beat, and take their time from the note
 * that they belong to (common practice, no source).
 */
public final class GraceNotes {
  /** The length of a grace note, as part of a quarter note. */
  private static final double QUARTERS = 1 / 8.0;

  /** The longest grace note, in microseconds. */
  private static final double MOST_MICROS = 80_000;

  private GraceNotes() {}

  /**
   * The length of each of some successive grace notes, in microseconds. Together they take at most
   * half of the time available.
   *
   * @param count the number of grace notes; the length is 0 if there are none
   * @param quarterMicros the length of a quarter note, in microseconds
   * @param available the time until the next note begins or the main note ends, in microseconds
   */
  public static double micros(int count, double quarterMicros, long available) {
    return count == 0
        ? 0
        : Math.min(Math.min(MOST_MICROS, QUARTERS * quarterMicros), available / 2.0 / count);
  }
}
