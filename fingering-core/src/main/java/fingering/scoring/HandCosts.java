package fingering.scoring;

import fingering.fingerboard.Grip;
import java.util.Arrays;

/**
 * What rules say that look only at the hand, in all transitions that are the same to them. A hand
 * has few places, so after a few notes most pairs of them are known. Safe for use by many threads:
 * they may measure a pair twice, and then store the same.
 */
final class HandCosts {
  private static final int UNKNOWN = -1;

  /** The size of a small table. */
  private static final int FEW = 64;

  private final Measure measure;

  /** Indexed by place and by the place reached; grows as places become known. */
  private volatile int[][] known = {};

  /** Measures an amount of 0 or more. */
  interface Measure {
    long amount(Grip before, Grip now, boolean shifts);
  }

  HandCosts(Measure measure) {
    this.measure = measure;
  }

  /**
   * The amounts for all pairs of groups of the aspect {@link GripAspect#HAND}, row by row.
   *
   * @param shifts in the same order: whether the hand shifts
   */
  long[] between(GripGroups before, GripGroups now, boolean[] shifts) {
    int columns = now.count(GripAspect.HAND);
    long[] amounts = new long[shifts.length];
    int[][] table = table(1 + Math.max(before.highestPlace(), now.highestPlace()));
    int[] places = now.places();
    for (int pair = 0; pair < amounts.length; ) {
      int from = pair / columns;
      int[] row = table[before.places()[from]];
      for (int to = 0; to < columns; to++, pair++) {
        int place = places[to];
        long amount = row[place];
        if (amount == UNKNOWN) {
          amount = measure.amount(before.hand(from), now.hand(to), shifts[pair]);
          if (amount <= Integer.MAX_VALUE) {
            row[place] = (int) amount;
          }
        }
        amounts[pair] = amount;
      }
    }
    return amounts;
  }

  private int[][] table(int places) {
    int[][] old = known;
    if (old.length >= places) {
      return old;
    }
    int size = Math.max(FEW, 2 * places);
    int[][] larger = new int[size][];
    for (int place = 0; place < size; place++) {
      int[] row = place < old.length ? Arrays.copyOf(old[place], size) : new int[size];
      Arrays.fill(row, place < old.length ? old.length : 0, size, UNKNOWN);
      larger[place] = row;
    }
    known = larger;
    return larger;
  }
}
