package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;

/**
 * What a path may cost at most. A node from which even the cheapest way onward, whatever it shows,
 * comes to more is on no such path.
 */
final class Bound {
  /** No bound. */
  static final Bound NONE = new Bound(new long[0][], 0);

  /** By moment and grip, the least sum from after it to the end; empty where there is no bound. */
  private final long[][] onward;

  private final long most;

  private Bound(long[][] onward, long most) {
    this.onward = onward;
    this.most = most;
  }

  /**
   * A bound for the layers that a pass without a requirement has gone through.
   *
   * @param most the sum that no path may exceed
   */
  static Bound of(Layers layers, ForwardPass free, long most) {
    int last = layers.moments().size() - 1;
    long[][] onward = new long[last + 1][];
    onward[last] = new long[layers.grips().get(last).size()];
    for (int m = last; m > 0; m--) {
      onward[m - 1] = before(layers, free, m, onward[m]);
    }
    return new Bound(onward, most);
  }

  private static long[] before(Layers layers, ForwardPass free, int m, long[] onward) {
    EdgeCosts edges = free.edges(m);
    long[] own = free.own(m);
    long singing = free.singing(m);
    ImmutableList<Grip> before = layers.grips().get(m - 1);
    for (int j = 0; j < own.length; j++) {
      boolean none = own[j] == ForwardPass.NONE || onward[j] == ForwardPass.NONE;
      own[j] = none ? ForwardPass.NONE : own[j] + onward[j];
    }
    long[] least = new long[before.size()];
    for (int i = 0; i < least.length; i++) {
      least[i] = edges.onward(i, own, singing);
    }
    return least;
  }

  /** The same with another limit. */
  Bound to(long limit) {
    return new Bound(onward, limit);
  }

  /** The highest sums with which the grips of a moment can be on a path; empty without a bound. */
  long[] most(int moment) {
    if (onward.length == 0) {
      return new long[0];
    }
    long[] highest = new long[onward[moment].length];
    for (int i = 0; i < highest.length; i++) {
      highest[i] = onward[moment][i] == ForwardPass.NONE ? -1 : most - onward[moment][i];
    }
    return highest;
  }
}
