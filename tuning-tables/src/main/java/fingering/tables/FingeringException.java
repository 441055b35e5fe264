package fingering.tables;

import com.google.common.collect.ImmutableList;

/**
 * Thrown when input cannot be used: typed text, a file, or a request that cannot be met. The
 * message is for the person who gave the input. The library reports all invalid input with this
 * type or a subtype. Any other exception is a bug in the program or a misuse of the API, except a
 * {@link java.util.concurrent.CancellationException} of a search that the program cancelled.
 */
public class FingeringException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final ImmutableList<Choice> choices;

  /**
   * Creates an exception.
   *
   * @param message what is wrong, where, and what to do about it
   * @param choices what has to be chosen, if the input leaves something open
   */
  public FingeringException(String message, Choice... choices) {
    super(message);
    this.choices = ImmutableList.copyOf(choices);
  }

  /**
   * Creates an exception with a cause.
   *
   * @param message what is wrong, where, and what to do about it
   * @param cause the cause
   */
  public FingeringException(String message, Throwable cause) {
    super(message, cause);
    choices = ImmutableList.of();
  }

  /** What has to be chosen, so that a program can say how; empty if that would not help. */
  public ImmutableList<Choice> choices() {
    return choices;
  }

  /** The message, never null. */
  @Override
  public String getMessage() {
    return String.valueOf(super.getMessage());
  }
}
