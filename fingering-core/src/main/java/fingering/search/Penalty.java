package fingering.search;

import fingering.fingerboard.Grip;

/**
 * Penalties for grips that break a soft constraint of a brief. The search minimises the sum of
 * penalties first, and the cost only among paths of equal penalty.
 */
public interface Penalty {
  /** No penalties. */
  Penalty NONE = (moment, grip) -> 0;

  /**
   * The penalty of a grip, 0 or more. Over a passage the highest penalties of all moments may add
   * up to 524,286 at most.
   *
   * @param moment index of the moment in the passage, from 0
   */
  long of(int moment, Grip grip);
}
