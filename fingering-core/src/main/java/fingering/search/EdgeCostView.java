package fingering.search;

/**
 * What every way from the grips of one moment to those of the next costs, in its place.
 *
 * @param costs what it costs wherever these grips follow one another so
 * @param slowness how slow the music is there, in hundredths of a second
 */
record EdgeCostView(EdgeCosts costs, long slowness) {
  /** The cost of the way from one grip to another. */
  long cost(int left, int reached) {
    return costs.cost(left, reached, slowness);
  }

  /** The most that any of them costs. */
  long most() {
    return costs.most(slowness);
  }

  /**
   * Lowers the sums with which grips are reached. What is reached from the grip of the least sum
   * for less than from another, however much dearer the way, needs not be reached from that.
   *
   * @param before the sums of the grips left, {@link ForwardPass#NONE} where not reached
   * @param reached the sums so far, one for each grip reached
   * @return whether any grip can be left
   */
  boolean reach(long[] before, long[] reached) {
    int best = 0;
    for (int i = 1; i < before.length; i++) {
      best = before[i] < before[best] ? i : best;
    }
    long least = before[best];
    if (least == ForwardPass.NONE) {
      return false;
    }
    long[] handicaps = new long[before.length];
    costs.handicaps(best, slowness, handicaps);
    for (int i = 0; i < before.length; i++) {
      if (before[i] != ForwardPass.NONE && before[i] - least <= handicaps[i]) {
        costs.reach(i, before[i], slowness, reached);
      }
    }
    return true;
  }

  /**
   * The least sum from after a grip to the end, or {@link ForwardPass#NONE} where none leads there.
   *
   * @param sums the least sums from the grips reached, themselves counted; {@link ForwardPass#NONE}
   *     where none leads to the end
   */
  long onward(int left, long[] sums) {
    long least = ForwardPass.NONE;
    for (int j = 0; j < sums.length; j++) {
      if (sums[j] != ForwardPass.NONE) {
        least = Math.min(least, sums[j] + cost(left, j));
      }
    }
    return least;
  }
}
