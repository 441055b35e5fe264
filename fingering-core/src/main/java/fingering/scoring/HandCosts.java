package fingering.scoring;

import fingering.fingerboard.Grip;
import java.util.Arrays;

/**
 * What rules say that look only at the hand, in all transitions that are the same to them. A hand
 * has few places, so after a few notes most pairs of them are known. Safe for use by many threads:
 * they may measure a pair twice, and then store the same.
 */
final class HandCosts {
  /** The number of places by which a table grows, more than needed at once. */
  private static final int MORE = 32;

  private static final int[] EMPTY = {};

  private final Measure measure;

  /**
   * Indexed by place and by the place reached: 1 more than the amount, 0 where it is not known.
   * Rows grow when they are used. A thread that sees an old row only measures again.
   */
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
      int[] row = row(table, before.places()[from]);
      for (int to = 0; to < columns; to++, pair++) {
        int place = places[to];
        int oneMore = row[place];
        if (oneMore > 0) {
          amounts[pair] = oneMore - 1L;
        } else {
          long amount = measure.amount(before.hand(from), now.hand(to), shifts[pair]);
          amounts[pair] = amount;
          row[place] = amount < Integer.MAX_VALUE ? (int) amount + 1 : 0;
        }
      }
    }
    return amounts;
  }

  /** The table, with at least so many places. */
  private int[][] table(int places) {
    int[][] table = known;
    if (table.length < places) {
      int few = table.length;
      table = Arrays.copyOf(table, places + MORE);
      Arrays.fill(table, few, table.length, EMPTY);
      known = table;
    }
    return table;
  }

  private static int[] row(int[][] table, int place) {
    if (table[place].length < table.length) {
      table[place] = Arrays.copyOf(table[place], table.length);
    }
    return table[place];
  }
}
