package fingering.musicxml;

import fingering.tables.FingeringException;

/**
 * A request that does not fit the score: no such part, measure, voice or instrument, or several to
 * choose from. The message is one sentence that says what there is to choose.
 */
public final class SelectionException extends FingeringException {

  private static final long serialVersionUID = 1L;

  /** Makes the exception with the sentence to show. */
  public SelectionException(String message) {
    super(message);
  }
}
