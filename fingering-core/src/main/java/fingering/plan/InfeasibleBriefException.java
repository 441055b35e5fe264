package fingering.plan;

import com.google.common.collect.ImmutableList;
import fingering.demand.Demand;
import fingering.tables.FingeringException;

/**
 * Thrown if no plan meets a brief. The message is one sentence that names the note or the demands
 * that rule it out, and what to do.
 */
public final class InfeasibleBriefException extends FingeringException {
  private static final long serialVersionUID = 1L;

  private final transient ImmutableList<Demand> conflicting;

  InfeasibleBriefException(String message) {
    this(message, ImmutableList.of());
  }

  InfeasibleBriefException(String message, ImmutableList<Demand> conflicting) {
    super(message);
    this.conflicting = conflicting;
  }

  /**
   * The demands that cannot all be met, although any one of them can be dropped to meet the others;
   * empty if something else rules out a plan.
   */
  public ImmutableList<Demand> conflicting() {
    return conflicting;
  }
}
