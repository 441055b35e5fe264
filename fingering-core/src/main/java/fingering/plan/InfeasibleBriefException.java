package fingering.plan;

import fingering.tables.FingeringException;

/**
 * Thrown if no plan meets a brief. The message is one sentence that names the note or the demands
 * that rule it out, and what to do.
 */
public final class InfeasibleBriefException extends FingeringException {
  private static final long serialVersionUID = 1L;

  InfeasibleBriefException(String message) {
    super(message);
  }
}
