package fingering.tables;

/**
 * Thrown when input cannot be used: typed text, a file, or a request that cannot be met. The
 * message is for the person who gave the input. The library reports all invalid input with this
 * type or a subtype. Any other exception is a bug in the program or a misuse of the API, except a
 * {@link java.util.concurrent.CancellationException} of a search that the program cancelled.
 */
public class FingeringException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * Creates an exception.
   *
   * @param message what is wrong, where, and what to do about it
   */
  public FingeringException(String message) {
    super(message);
  }

  /**
   * Creates an exception with a cause.
   *
   * @param message what is wrong, where, and what to do about it
   * @param cause the cause
   */
  public FingeringException(String message, Throwable cause) {
    super(message, cause);
  }

  /** The message, never null. */
  @Override
  public String getMessage() {
    return String.valueOf(super.getMessage());
  }
}
