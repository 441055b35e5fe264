package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.scoring.NoteContext;
import fingering.scoring.Scoring;

/** What each grip of a moment costs by itself. Arrays are not copied; nobody changes them. */
final class NodeCosts {
  private final long[] unsung;
  private final long[] paced;

  private NodeCosts(long[] unsung, long[] paced) {
    this.unsung = unsung;
    this.paced = paced;
  }

  static NodeCosts of(Scoring scoring, NoteContext unsung, ImmutableList<Grip> grips) {
    long[] costs = new long[grips.size()];
    long[] paced = new long[grips.size()];
    for (int j = 0; j < costs.length; j++) {
      costs[j] = scoring.cost(unsung, grips.get(j));
      paced[j] = scoring.paced(unsung, grips.get(j));
    }
    return new NodeCosts(costs, paced);
  }

  /**
   * Adds the cost of each grip, where music sings so much, to the sums with which it is reached.
   */
  void addTo(long[] sums, long slowness) {
    for (int j = 0; j < sums.length; j++) {
      sums[j] += unsung[j] + slowness * paced[j];
    }
  }

  /** The cost of a grip where music sings so much. */
  long cost(int grip, long slowness) {
    return unsung[grip] + slowness * paced[grip];
  }
}
