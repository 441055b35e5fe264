package fingering.search;

/** Selects grips that no path may use. */
public interface NodeFilter {
  /** Excludes no grip. */
  NodeFilter NONE = (moment, grip) -> false;

  /**
   * Whether a grip is excluded.
   *
   * @param moment index of the moment in the passage, from 0
   * @param grip index of the grip among those of the moment, from 0
   */
  boolean at(int moment, int grip);
}
