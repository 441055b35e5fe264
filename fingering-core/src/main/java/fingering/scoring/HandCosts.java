package fingering.scoring;

import fingering.fingerboard.Grip;
import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What rules say that look only at the hand, in all transitions that are the same to them. A hand
 * has few places, so after a few notes most pairs of them are known. Safe for use by many threads:
 * they may measure a pair twice, and then store the same.
 */
final class HandCosts {
  private static final int UNKNOWN = -1;

  /** The length of a short row. */
  private static final int SHORT = 64;

  private final Measure measure;

  /** By the number of a place: the amounts of moves from it, indexed by the place reached. */
  private final Map<Integer, int[]> rows = new ConcurrentHashMap<>();

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
    for (int pair = 0; pair < amounts.length; ) {
      int from = pair / columns;
      int[] known = row(before.place(from), now.places());
      for (int to = 0; to < columns; to++, pair++) {
        int place = now.place(to);
        long amount = known[place];
        if (amount == UNKNOWN) {
          amount = measure.amount(before.hand(from), now.hand(to), shifts[pair]);
          if (amount <= Integer.MAX_VALUE) {
            known[place] = (int) amount;
          }
        }
        amounts[pair] = amount;
      }
    }
    return amounts;
  }

  /** The row of a place, with at least some length. */
  private int[] row(int from, int length) {
    int[] known = rows.get(from);
    if (known != null && known.length >= length) {
      return known;
    }
    int[] row = new int[Math.max(SHORT, Integer.highestOneBit(length) << 1)];
    Arrays.fill(row, UNKNOWN);
    if (known != null) {
      System.arraycopy(known, 0, row, 0, known.length);
    }
    rows.put(from, row);
    return row;
  }
}
