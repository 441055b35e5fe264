package fingering.practice;

import fingering.tables.FingeringException;

/** Thrown if a journal cannot be read or written, or an entry is not valid. */
public final class JournalException extends FingeringException {

  private static final long serialVersionUID = 1L;

  /** Creates an exception with the sentence to show. */
  public JournalException(String message) {
    super(message);
  }

  /** Creates an exception with the sentence to show and its cause. */
  public JournalException(String message, Throwable cause) {
    super(message, cause);
  }
}
