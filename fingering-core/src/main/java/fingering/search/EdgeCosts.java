package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.scoring.Passing;
import fingering.scoring.Scoring;

/**
 * What every way from the grips of one moment to those of the next costs. Arrays are not copied;
 * nobody changes them.
 */
final class EdgeCosts {
  private final int before;

  /** By grip reached, then grip left. */
  private final long[] unsung;

  /** The same for each hundredth of a second of singing; empty where it costs nothing. */
  private final long[] paced;

  /** By grip left, the dearest way from it. */
  private final long[] dearest;

  private final long[] dearestPaced;

  private EdgeCosts(int before, long[] unsung, long[] paced, long[] dearest, long[] dearestPaced) {
    this.before = before;
    this.unsung = unsung;
    this.paced = paced;
    this.dearest = dearest;
    this.dearestPaced = dearestPaced;
  }

  static EdgeCosts of(
      Scoring scoring, Passing unsung, ImmutableList<Grip> before, ImmutableList<Grip> now) {
    int left = before.size();
    long[] costs = new long[left * now.size()];
    long[] paced = new long[left * now.size()];
    long[] dearest = new long[left];
    long[] dearestPaced = new long[left];
    boolean paces = false;
    for (int j = 0; j < now.size(); j++) {
      Grip reached = now.get(j);
      for (int i = 0; i < left; i++) {
        int at = j * left + i;
        costs[at] = scoring.cost(unsung, before.get(i), reached);
        paced[at] = scoring.paced(unsung, before.get(i), reached);
        dearest[i] = Math.max(dearest[i], costs[at]);
        dearestPaced[i] = Math.max(dearestPaced[i], paced[at]);
        paces |= paced[at] > 0;
      }
    }
    return new EdgeCosts(left, costs, paces ? paced : new long[0], dearest, dearestPaced);
  }

  /** The cost of the way from one grip to another where music sings so much. */
  long cost(int left, int reached, long singing) {
    int at = reached * before + left;
    return paced.length == 0 ? unsung[at] : unsung[at] + singing * paced[at];
  }

  /** No way from that grip costs more. */
  long dearest(int left, long singing) {
    return dearest[left] + singing * dearestPaced[left];
  }

  /**
   * The least sum with which a grip is reached.
   *
   * @param sums the sums of the grips left, the first so many
   * @param left which grips these are
   */
  long least(long[] sums, int[] left, int many, int reached, long singing) {
    int column = reached * before;
    long least = Long.MAX_VALUE;
    if (singing == 0 || paced.length == 0) {
      for (int k = 0; k < many; k++) {
        least = Math.min(least, sums[k] + unsung[column + left[k]]);
      }
    } else {
      for (int k = 0; k < many; k++) {
        int at = column + left[k];
        least = Math.min(least, sums[k] + unsung[at] + singing * paced[at]);
      }
    }
    return least;
  }
}
