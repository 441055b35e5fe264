package fingering.tables;

/**
 * Input that cannot be used: something typed, a file, or a request that nothing meets. Its message
 * is written for the person who gave the input. Every such refusal of the library is of this type;
 * any other exception is a fault of the program, or a wrong use of the API.
 */
public class FingeringException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * A refusal.
   *
   * @param message what is wrong, where, and what to do about it
   */
  public FingeringException(String message) {
    super(message);
  }

  /**
   * A refusal that something else led to.
   *
   * @param message what is wrong, where, and what to do about it
   * @param cause what led to it
   */
  public FingeringException(String message, Throwable cause) {
    super(message, cause);
  }

  /** The message; never missing. */
  @Override
  public String getMessage() {
    return String.valueOf(super.getMessage());
  }
}
