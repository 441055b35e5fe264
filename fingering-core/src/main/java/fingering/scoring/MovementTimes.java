package fingering.scoring;

/**
 * The time that movements between the grips of two moments take by one rule, and what the rule
 * charges if there is less. Immutable.
 */
public final class MovementTimes {
  private final TimedTransitionRule rule;
  private final long weight;

  /** Indexed by grip: its group, from 0. */
  private final int[] from;

  private final int[] to;

  /** Indexed by earlier group: whether its grips are only open strings. */
  private final boolean[] open;

  /** Microseconds for each pair of groups, row by row. */
  private final long[] needed;

  private final int columns;

  /** The longest movement from open strings. */
  private final long longestFromOpen;

  /** The longest movement from other grips. */
  private final long longest;

  MovementTimes(
      TimedTransitionRule rule,
      long weight,
      GripAspect aspect,
      GripGroups before,
      GripGroups now,
      long[] needed) {
    this.rule = rule;
    this.weight = weight;
    this.needed = needed;
    from = before.groups(aspect);
    to = now.groups(aspect);
    columns = now.count(aspect);
    open = new boolean[before.count(aspect)];
    long highestFromOpen = 0;
    long highest = 0;
    for (int g = 0; g < open.length; g++) {
      open[g] = before.grips()[before.firsts(aspect)[g]].open();
      for (int h = 0; h < columns; h++) {
        long micros = needed[g * columns + h];
        if (open[g]) {
          highestFromOpen = Math.max(highestFromOpen, micros);
        } else {
          highest = Math.max(highest, micros);
        }
      }
    }
    longestFromOpen = highestFromOpen;
    longest = highest;
  }

  /** Whether some movement takes longer than there is time. */
  public boolean missing(TransitionTime time) {
    return longestFromOpen > time.micros(true) || longest > time.micros(false);
  }

  /** Points for the missing time between each pair of groups, row by row. */
  public long[] charges(TransitionTime time) {
    long[] charges = new long[needed.length];
    int unit = (int) Math.min(Integer.MAX_VALUE, rule.unitMicros());
    for (int pair = 0; pair < charges.length; ) {
      boolean fromOpen = open[pair / columns];
      long micros = time.micros(fromOpen);
      if (micros >= (fromOpen ? longestFromOpen : longest)) {
        pair += columns;
        continue;
      }
      for (int h = 0; h < columns; h++, pair++) {
        int missing = (int) (needed[pair] - micros);
        charges[pair] = missing > 0 ? missing / unit * weight : 0;
      }
    }
    return charges;
  }

  /**
   * Adds the points for leaving a grip to each grip that is reached.
   *
   * @param charges the {@link #charges}
   * @param grip index of the earlier grip
   */
  public void add(long[] charges, int grip, long[] costs) {
    int first = from[grip] * columns;
    for (int j = 0; j < costs.length; j++) {
      costs[j] += charges[first + to[j]];
    }
  }
}
