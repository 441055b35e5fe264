package fingering.demand;

import fingering.fingerboard.Grip;
import fingering.search.Requirement;

/** Counts up to what is asked for; more makes no difference. */
final class BoundedCount implements Requirement {
  /** How much of what is counted one moment has. */
  interface Count {
    /**
     * The count, 0 or more.
     *
     * @param moment index of the moment
     * @param before the grip before; at the first moment the grip itself
     */
    int of(int moment, Grip before, Grip now);
  }

  private final int wanted;
  private final boolean looksBack;
  private final Count count;

  private BoundedCount(int wanted, boolean looksBack, Count count) {
    this.wanted = wanted;
    this.looksBack = looksBack;
    this.count = count;
  }

  /** Counts what a grip has by itself. */
  static BoundedCount to(int wanted, Count count) {
    return new BoundedCount(wanted, false, count);
  }

  /** Counts what lies in the way from one grip to the next. */
  static BoundedCount ways(int wanted, Count count) {
    return new BoundedCount(wanted, true, count);
  }

  @Override
  public int states() {
    return wanted + 1;
  }

  @Override
  public boolean looksBack() {
    return looksBack;
  }

  @Override
  public long symbols() {
    return wanted + 1L;
  }

  @Override
  public long symbol(int moment, Grip before, Grip now) {
    return Math.min(wanted, count.of(moment, before, now));
  }

  @Override
  public int next(int state, long symbol) {
    return (int) Math.min(wanted, state + symbol);
  }

  @Override
  public boolean satisfied(int state) {
    return state == wanted;
  }
}
