package fingering.search;

/** Counts the steps of a search, and asks every few thousand whether to give it up. */
final class Steps {
  private static final long BETWEEN = 4_096;

  private final Cancellation cancellation;
  private long left;

  Steps(Cancellation cancellation) {
    this.cancellation = cancellation;
  }

  /**
   * Counts some steps; the first call asks at once.
   *
   * @throws java.util.concurrent.CancellationException if the search is cancelled
   */
  void take(long steps) {
    left -= steps;
    if (left < 0) {
      left = BETWEEN;
      cancellation.check();
    }
  }
}
