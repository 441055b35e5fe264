package fingering.musicxml;

import fingering.tables.FingeringException;

/**
 * A score that cannot be written where it was asked for. The message is one sentence for the person
 * at the keyboard: what is wrong, where, and what to do next. Nothing was written.
 */
public final class UnwritableScoreException extends FingeringException {

  private static final long serialVersionUID = 1L;

  /** Makes the exception with the sentence to show. */
  public UnwritableScoreException(String message) {
    super(message);
  }

  /** Makes the exception with the sentence to show and the failure underneath, for logs. */
  public UnwritableScoreException(String message, Throwable cause) {
    super(message, cause);
  }
}
