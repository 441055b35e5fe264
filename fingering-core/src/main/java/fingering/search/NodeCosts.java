package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.scoring.NoteContext;
import fingering.scoring.Scoring;
import java.util.Arrays;

/** What each grip of a moment costs by itself. Arrays are not copied; nobody changes them. */
final class NodeCosts {
  private final long[] unsung;
  private final long[] paced;
  private final long mostUnsung;
  private final long mostPaced;

  private NodeCosts(long[] unsung, long[] paced) {
    this.unsung = unsung;
    this.paced = paced;
    mostUnsung = Arrays.stream(unsung).max().orElse(0);
    mostPaced = Arrays.stream(paced).max().orElse(0);
  }

  static NodeCosts of(Scoring scoring, NoteContext context, ImmutableList<Grip> grips) {
    long[] costs = new long[grips.size()];
    long[] paced = new long[grips.size()];
    for (int j = 0; j < costs.length; j++) {
      costs[j] = scoring.unpacedCost(context, grips.get(j));
      paced[j] = scoring.pacedCost(context, grips.get(j));
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

  /** The most that a grip costs, or somewhat more. */
  long most(long slowness) {
    return mostUnsung + slowness * mostPaced;
  }

  /** The cost of a grip where music sings so much. */
  long cost(int grip, long slowness) {
    return unsung[grip] + slowness * paced[grip];
  }
}
