package fingering.practice;

import fingering.tables.FingeringException;

/** A journal that cannot be read or written, or an entry that cannot be made. */
public final class JournalException extends FingeringException {

  private static final long serialVersionUID = 1L;

  /** Makes the exception with the sentence to show. */
  public JournalException(String message) {
    super(message);
  }

  /** The same with what caused it. */
  public JournalException(String message, Throwable cause) {
    super(message, cause);
  }
}
