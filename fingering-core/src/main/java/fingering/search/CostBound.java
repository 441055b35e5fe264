package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;

/**
 * What a path may cost at most. A node from which even the cheapest way onward, whatever it shows,
 * comes to more is on no such path.
 */
final class CostBound {
  /** By moment and grip, the least sum from after it to the end. */
  private final long[][] onward;

  private final long most;

  private CostBound(long[][] onward, long most) {
    this.onward = onward;
    this.most = most;
  }

  /**
   * A bound within which all paths lie through the layers that a pass without a requirement has
   * gone through.
   */
  static CostBound of(LayeredGraph layers, ForwardPass free) {
    int last = layers.moments().size() - 1;
    long[][] onward = new long[last + 1][];
    onward[last] = new long[layers.grips().get(last).size()];
    for (int m = last; m > 0; m--) {
      onward[m - 1] = before(layers, free, m, onward[m]);
    }
    return new CostBound(onward, ForwardPass.NONE - 1);
  }

  private static long[] before(LayeredGraph layers, ForwardPass free, int m, long[] onward) {
    EdgeCostView ways = free.ways(m);
    long[] own = free.own(m);
    ImmutableList<Grip> before = layers.grips().get(m - 1);
    long[] reached = new long[own.length];
    for (int j = 0; j < own.length; j++) {
      reached[j] = ForwardPass.plus(own[j], onward[j]);
    }
    long[] least = new long[before.size()];
    for (int i = 0; i < least.length; i++) {
      least[i] = ways.onward(i, reached);
    }
    return least;
  }

  /**
   * The same for paths that offend no more than one, and cost no more than so many points above.
   */
  CostBound above(Path path, long points) {
    return new CostBound(onward, ForwardPass.sum(path) + points);
  }

  /** The highest sums with which the grips of a moment can be on a path; -1 where they cannot. */
  long[] most(int moment) {
    long[] highest = new long[onward[moment].length];
    for (int i = 0; i < highest.length; i++) {
      highest[i] = onward[moment][i] == ForwardPass.NONE ? -1 : most - onward[moment][i];
    }
    return highest;
  }
}
