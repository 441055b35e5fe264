package fingering.search;

import java.util.concurrent.CancellationException;

/**
 * Says whether to give up a search. A search asks every few thousand steps, in the thread that runs
 * it. The library does not read the clock; for a time limit pass a test of the caller's own clock,
 * {@code () -> clock.millis() > deadline}.
 */
@FunctionalInterface
public interface Cancellation {
  /** A search that runs to its end. */
  Cancellation NEVER = () -> false;

  /** Whether to give up now. It must be quick and must not change anything. */
  boolean requested();

  /**
   * Gives up if that is requested.
   *
   * @throws CancellationException if it is
   */
  default void check() {
    if (requested()) {
      throw new CancellationException("the search was cancelled");
    }
  }
}
