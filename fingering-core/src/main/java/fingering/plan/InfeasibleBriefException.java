package fingering.plan;

import fingering.tables.FingeringException;

/** No plan can meet a brief; the message says which note and which demand stand in the way. */
public final class InfeasibleBriefException extends FingeringException {
  private static final long serialVersionUID = 1L;

  InfeasibleBriefException(String message) {
    super(message);
  }
}
