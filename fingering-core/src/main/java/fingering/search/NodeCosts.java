package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.scoring.NoteContext;
import fingering.scoring.Scoring;
import java.util.Arrays;

/** The costs of the grips of a moment. */
final class NodeCosts {
  private final long[] points;
  private final long max;

  private NodeCosts(long[] points) {
    this.points = points;
    max = Arrays.stream(points).max().orElse(0);
  }

  /** The costs by the rules that judge each grip alone. */
  static NodeCosts plain(Scoring scoring, NoteContext context, ImmutableList<Grip> grips) {
    long[] points = new long[grips.size()];
    scoring.addPlainCosts(context, grips, points);
    return new NodeCosts(points);
  }

  /** These costs and those by the rules that compare the grips. */
  NodeCosts compared(Scoring scoring, NoteContext context, ImmutableList<Grip> grips) {
    long[] all = points.clone();
    scoring.addComparedCosts(context, grips, all);
    return new NodeCosts(all);
  }

  /** Adds the cost of each grip to its score. */
  void addTo(long[] scores) {
    for (int j = 0; j < scores.length; j++) {
      scores[j] += points[j];
    }
  }

  /** The cost of a grip. */
  long cost(int grip) {
    return points[grip];
  }

  /** An upper bound on the cost of a grip. */
  long max() {
    return max;
  }
}
