package fingering.search;

import fingering.tables.FingeringException;
import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * A number for every way from the grips of one moment to those of the next. Safe for use by many
 * threads once it is filled.
 */
final class CostMatrix {
  private static final AtomicReferenceArray<long[]> NONE = new AtomicReferenceArray<>(0);

  /** Grips reached. */
  private final int now;

  /**
   * By grip left, then grip reached. Half as long as sums are, so that twice as many are at hand.
   */
  private final int[] values;

  /** By grip left, {@link #excess}; those not asked for yet are missing, and at first all are. */
  private volatile AtomicReferenceArray<long[]> excess = NONE;

  /** By grip left, the most of all ways from it. */
  private final int[] most;

  private int highest;

  /** A table of nothing but 0. */
  CostMatrix(int before, int now) {
    this.now = now;
    values = new int[before * now];
    most = new int[before];
  }

  /**
   * Puts a number of 0 or more in its place.
   *
   * @throws FingeringException if it is beyond what any weights but absurd ones lead to
   */
  void put(int left, int reached, long value) {
    if (value > Integer.MAX_VALUE) {
      throw new FingeringException(
          "by these weights a single step costs %d points; divide all of them by ten"
              .formatted(value));
    }
    values[left * now + reached] = (int) value;
    most[left] = Math.max(most[left], (int) value);
    highest = Math.max(highest, (int) value);
  }

  /** How many grips are reached. */
  int reached() {
    return now;
  }

  long get(int left, int reached) {
    return values[left * now + reached];
  }

  /** The most of all ways from a grip. */
  long most(int left) {
    return most[left];
  }

  /** The highest number. */
  long most() {
    return highest;
  }

  /** Whether there is nothing but 0. */
  boolean empty() {
    return highest == 0;
  }

  /**
   * By grip left, by how much the number of a way from one can exceed, at the most, that of the way
   * from that to the same place. Nobody changes it.
   */
  long[] excess(int left) {
    AtomicReferenceArray<long[]> all = excess;
    if (all == NONE) {
      // Where two threads come at once one of them reckons in vain.
      all = new AtomicReferenceArray<>(most.length);
      excess = all;
    }
    long[] known = all.get(left);
    if (known == null) {
      known = new long[most.length];
      for (int i = 0; i < known.length; i++) {
        known[i] = excessOver(left, i);
      }
      all.set(left, known);
    }
    return known;
  }

  private long excessOver(int left, int other) {
    long greatest = Long.MIN_VALUE;
    for (int j = 0; j < now; j++) {
      greatest = Math.max(greatest, (long) values[left * now + j] - values[other * now + j]);
    }
    return greatest;
  }

  /** Lowers sums to that of a grip left and the numbers of the ways from it. */
  void lower(int left, long sum, long[] sums) {
    int first = left * now;
    for (int j = 0; j < now; j++) {
      sums[j] = Math.min(sums[j], sum + values[first + j]);
    }
  }

  /** The same with so many times the numbers of another table added. */
  void lower(int left, long sum, long times, CostMatrix more, long[] sums) {
    int first = left * now;
    for (int j = 0; j < now; j++) {
      sums[j] = Math.min(sums[j], sum + values[first + j] + times * more.values[first + j]);
    }
  }
}
