package fingering.abc.syntax;

import fingering.tables.Choice;
import fingering.tables.FingeringException;

/**
 * Music in ABC notation that cannot be read. The message is one sentence: line and column, what is
 * wrong, and what to write instead.
 */
public final class AbcException extends FingeringException {

  private static final long serialVersionUID = 1L;

  /** Creates the exception with the message to show, and what has to be chosen if anything. */
  public AbcException(String message, Choice... choices) {
    super(message, choices);
  }
}
