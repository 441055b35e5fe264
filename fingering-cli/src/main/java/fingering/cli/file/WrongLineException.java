package fingering.cli.file;

import fingering.tables.FingeringException;

/** A line that cannot be read, before it is known to the reader which file it is in. */
public final class WrongLineException extends FingeringException {
  private static final long serialVersionUID = 1L;

  private final int line;

  public WrongLineException(int line, String message) {
    super(message);
    this.line = line;
  }

  /** The line, from 1. */
  public int line() {
    return line;
  }
}
