package fingering.search;

/** Reaches the grips of a moment from those of the one before, where every grip can follow. */
final class Reach {
  // Room for the grips from which others may best be reached.
  private long[] from = new long[0];
  private int[] left = new int[0];

  /**
   * Lowers the sums with which grips are reached. What is reached from the grip of the least sum
   * for less than from another, however much dearer the way, needs not be reached from that.
   *
   * @param before the sums of the grips left, {@link ForwardPass#NONE} where not reached
   * @param reached the sums so far, one for each grip reached
   * @return whether any grip can be left
   */
  boolean lower(EdgeCosts edges, long[] before, long singing, long[] reached) {
    int best = 0;
    for (int i = 1; i < before.length; i++) {
      best = before[i] < before[best] ? i : best;
    }
    long least = before[best];
    if (least == ForwardPass.NONE) {
      return false;
    }
    long[] handicaps = edges.handicaps(best);
    long[] paced = edges.pacedHandicaps(best);
    if (from.length < before.length) {
      from = new long[before.length];
      left = new int[before.length];
    }
    int many = 0;
    for (int i = 0; i < before.length; i++) {
      from[many] = before[i];
      left[many] = i;
      many += before[i] - least <= handicaps[i] + singing * paced[i] ? 1 : 0;
    }
    edges.reach(from, left, many, singing, reached);
    return true;
  }
}
