package fingering.musicxml;

import fingering.tables.FingeringException;

/**
 * A score that cannot be written to the requested file. The message is one sentence for the user:
 * what is wrong, where, and what to do. Nothing was written.
 */
public final class UnwritableScoreException extends FingeringException {

  private static final long serialVersionUID = 1L;

  /** Creates the exception with the message to show. */
  public UnwritableScoreException(String message) {
    super(message);
  }

  /** Creates the exception with the message to show and its cause. */
  public UnwritableScoreException(String message, Throwable cause) {
    super(message, cause);
  }
}
