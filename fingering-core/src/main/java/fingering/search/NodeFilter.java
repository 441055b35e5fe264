package fingering.search;

/** Which grips must not be taken, whatever the cost. */
public interface NodeFilter {
  /** Closes nothing. */
  NodeFilter NONE = (moment, grip) -> false;

  /**
   * Whether a grip is closed.
   *
   * @param moment index of the moment in the passage, from 0
   * @param grip index of the grip among those of the moment, from 0
   */
  boolean at(int moment, int grip);
}
