package fingering.musicxml;

/**
 * A score that cannot be read. The message is one sentence for the person at the keyboard: what is
 * wrong, where, and what to do next.
 */
public final class UnreadableScoreException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** Makes the exception with the sentence to show. */
  public UnreadableScoreException(String message) {
    super(message);
  }

  /** Makes the exception with the sentence to show and the failure underneath, for logs. */
  public UnreadableScoreException(String message, Throwable cause) {
    super(message, cause);
  }
}
