package fingering.musicxml;

import fingering.tables.Choice;
import fingering.tables.FingeringException;

/**
 * A request that does not fit the score: the part, measures, voice or instrument do not exist, or
 * several match. The message is one sentence that lists the choices.
 */
public final class SelectionException extends FingeringException {

  private static final long serialVersionUID = 1L;

  /** Creates the exception with the message to show, and what has to be chosen if anything. */
  public SelectionException(String message, Choice... choices) {
    super(message, choices);
  }
}
