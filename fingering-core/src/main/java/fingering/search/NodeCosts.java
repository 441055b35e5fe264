package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.scoring.NoteContext;
import fingering.scoring.Scoring;
import java.util.Arrays;

/** The costs of the grips of a moment, at any pace. */
final class NodeCosts {
  private final long[] points;

  /** Points for each hundredth of a second of slowness. */
  private final long[] paced;

  private final long maxPoints;
  private final long maxPaced;

  private NodeCosts(long[] points, long[] paced) {
    this.points = points;
    this.paced = paced;
    maxPoints = Arrays.stream(points).max().orElse(0);
    maxPaced = Arrays.stream(paced).max().orElse(0);
  }

  static NodeCosts of(Scoring scoring, NoteContext context, ImmutableList<Grip> grips) {
    long[] points = new long[grips.size()];
    long[] paced = new long[grips.size()];
    for (int j = 0; j < points.length; j++) {
      points[j] = scoring.unpacedCost(context, grips.get(j));
      paced[j] = scoring.pacedCost(context, grips.get(j));
    }
    return new NodeCosts(points, paced);
  }

  /** Adds the cost of each grip to its score. */
  void addTo(long[] scores, long slowness) {
    for (int j = 0; j < scores.length; j++) {
      scores[j] += points[j] + slowness * paced[j];
    }
  }

  /** The cost of a grip. */
  long cost(int grip, long slowness) {
    return points[grip] + slowness * paced[grip];
  }

  /** An upper bound on the cost of a grip. */
  long max(long slowness) {
    return maxPoints + slowness * maxPaced;
  }
}
