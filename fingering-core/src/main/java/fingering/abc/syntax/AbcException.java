package fingering.abc.syntax;

import fingering.tables.FingeringException;

/**
 * Music in ABC notation that cannot be read. The message is one sentence: where, by line and
 * column, what is wrong there, and what to write instead.
 */
public final class AbcException extends FingeringException {

  private static final long serialVersionUID = 1L;

  public AbcException(String message) {
    super(message);
  }
}
