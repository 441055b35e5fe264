package fingering.cli.terminal;

import fingering.tables.FingeringException;

/**
 * Ends a command whose output nothing takes any more. {@link Screen#failure} knows the reason, and
 * the end of the program words it.
 */
public final class PrintingStoppedException extends FingeringException {
  private static final long serialVersionUID = 1L;

  /** Creates the exception. */
  public PrintingStoppedException() {
    super("The output could not be printed.");
  }
}
