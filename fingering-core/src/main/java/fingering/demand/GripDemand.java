package fingering.demand;

import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.tables.FingeringException;
import java.util.BitSet;

/** A demand on each grip by itself, in some measures or everywhere. */
public sealed interface GripDemand extends Demand
    permits AllowPositions, AllowStrings, Avoid, StayIn, FixNote, KeepPlan {
  /**
   * The moments of a passage that it concerns.
   *
   * @throws FingeringException if the passage has no such measure or no note at that time
   */
  BitSet concerns(Passage passage);

  /** Whether a grip keeps it at a moment that it concerns. */
  boolean keeps(Moment moment, Grip grip);

  /**
   * Whether a moment at which no grip keeps it is left free, instead of making the plan impossible.
   */
  default boolean yields() {
    return false;
  }
}
