package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.scoring.Passing;
import fingering.scoring.Scoring;

/** What every way from the grips of one moment to those of the next costs. */
final class EdgeCosts {
  private static final long[] NOTHING = new long[0];

  private final int before;
  private final int now;

  /** By grip left, then grip reached. */
  private final long[] unsung;

  /** The same for each hundredth of a second of singing; empty where it costs nothing. */
  private final long[] paced;

  /** By grip left, {@link #handicaps}; those not asked for yet are missing. */
  private final long[][] handicaps;

  private final long[][] pacedHandicaps;

  private EdgeCosts(int before, int now, long[] unsung, long[] paced) {
    this.before = before;
    this.now = now;
    this.unsung = unsung;
    this.paced = paced;
    handicaps = new long[before][];
    pacedHandicaps = new long[before][];
  }

  static EdgeCosts of(
      Scoring scoring, Passing unsung, ImmutableList<Grip> before, ImmutableList<Grip> now) {
    long[] costs = new long[before.size() * now.size()];
    long[] paced = new long[costs.length];
    boolean paces = false;
    int at = 0;
    for (Grip left : before) {
      for (Grip reached : now) {
        costs[at] = scoring.cost(unsung, left, reached);
        paced[at] = scoring.paced(unsung, left, reached);
        paces |= paced[at] > 0;
        at++;
      }
    }
    return new EdgeCosts(before.size(), now.size(), costs, paces ? paced : NOTHING);
  }

  /** The cost of the way from one grip to another where music sings so much. */
  long cost(int left, int reached, long singing) {
    int at = left * now + reached;
    return paced.length == 0 ? unsung[at] : unsung[at] + singing * paced[at];
  }

  /**
   * By grip, how much dearer a way from one grip can be than the way from that grip to the same
   * place. A grip whose sum is higher by more than that is worth leaving for no place.
   */
  long[] handicaps(int left) {
    if (handicaps[left] == null) {
      handicaps[left] = handicaps(left, unsung);
    }
    return handicaps[left];
  }

  /** The same for each hundredth of a second of singing. */
  long[] pacedHandicaps(int left) {
    if (pacedHandicaps[left] == null) {
      pacedHandicaps[left] = paced.length == 0 ? new long[before] : handicaps(left, paced);
    }
    return pacedHandicaps[left];
  }

  private long[] handicaps(int left, long[] costs) {
    long[] most = new long[before];
    for (int i = 0; i < before; i++) {
      long dearer = Long.MIN_VALUE;
      for (int j = 0; j < now; j++) {
        dearer = Math.max(dearer, costs[left * now + j] - costs[i * now + j]);
      }
      most[i] = dearer;
    }
    return most;
  }

  /**
   * The least sum from after a grip to the end, or the greatest number where none leads there.
   *
   * @param sums the least sums from the grips reached, themselves counted; the greatest number
   *     where none leads to the end
   */
  long onward(int left, long[] sums, long singing) {
    long least = Long.MAX_VALUE;
    for (int j = 0; j < sums.length; j++) {
      if (sums[j] != Long.MAX_VALUE) {
        least = Math.min(least, sums[j] + cost(left, j, singing));
      }
    }
    return least;
  }

  /**
   * Lowers the sums with which grips are reached to those of the ways from some grips. Four grips
   * are reached at a time, whose sums stay at hand meanwhile.
   *
   * @param from the sums of the grips left, the first so many
   * @param left which grips these are
   * @param sums the sums so far, one for each grip reached
   */
  void reach(long[] from, int[] left, int many, long singing, long[] sums) {
    long[] more = singing == 0 ? NOTHING : paced;
    int j = 0;
    for (; j + 4 <= now; j += 4) {
      long one = sums[j];
      long two = sums[j + 1];
      long three = sums[j + 2];
      long four = sums[j + 3];
      for (int k = 0; k < many; k++) {
        int at = left[k] * now + j;
        long sum = from[k];
        if (more.length == 0) {
          one = Math.min(one, sum + unsung[at]);
          two = Math.min(two, sum + unsung[at + 1]);
          three = Math.min(three, sum + unsung[at + 2]);
          four = Math.min(four, sum + unsung[at + 3]);
        } else {
          one = Math.min(one, sum + unsung[at] + singing * more[at]);
          two = Math.min(two, sum + unsung[at + 1] + singing * more[at + 1]);
          three = Math.min(three, sum + unsung[at + 2] + singing * more[at + 2]);
          four = Math.min(four, sum + unsung[at + 3] + singing * more[at + 3]);
        }
      }
      sums[j] = one;
      sums[j + 1] = two;
      sums[j + 2] = three;
      sums[j + 3] = four;
    }
    for (; j < now; j++) {
      for (int k = 0; k < many; k++) {
        sums[j] = Math.min(sums[j], from[k] + cost(left[k], j, singing));
      }
    }
  }
}
