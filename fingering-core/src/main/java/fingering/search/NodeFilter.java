package fingering.search;

/** Grips that no path may use, at any cost. */
public interface NodeFilter {
  /** Closes no grip. */
  NodeFilter NONE = (moment, grip) -> false;

  /**
   * Whether a grip is closed.
   *
   * @param moment index of the moment in the passage, from 0
   * @param grip index of the grip among those of the moment, from 0
   */
  boolean at(int moment, int grip);
}
