package fingering.demand;

import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.tables.FingeringException;
import java.util.BitSet;

/**
 * A constraint on each grip by itself, in some measures or everywhere. For one of your own, use
 * {@link OwnLimit}.
 */
public sealed interface GripDemand extends Demand
    permits AllowPositions, AllowStrings, Avoid, StayIn, FixNote, KeepPlan, OwnLimit {
  /**
   * The moments of a passage to which it applies.
   *
   * @throws FingeringException if the passage does not have the measures or the note that it names
   */
  BitSet moments(Passage passage);

  /** Whether a grip meets it, at a moment to which it applies. */
  boolean allows(Moment moment, Grip grip);

  /**
   * Whether it is a soft constraint, dropped at moments where no grip meets it. A hard constraint
   * makes the plan infeasible there.
   */
  default boolean soft() {
    return false;
  }
}
