package fingering.demand;

import fingering.fingerboard.Grip;
import fingering.search.Requirement;

/** An automaton that counts up to a target and then ignores further symbols. */
final class BoundedCount implements Requirement {
  /** The count that one moment adds. */
  interface Count {
    /**
     * The count at a moment, 0 or more.
     *
     * @param moment index of the moment
     * @param before the grip of the previous moment; at the first moment the grip itself
     * @param now the grip of the moment
     */
    int at(int moment, Grip before, Grip now);
  }

  private final int target;
  private final boolean looksBack;
  private final Count count;

  private BoundedCount(int target, boolean looksBack, Count count) {
    this.target = target;
    this.looksBack = looksBack;
    this.count = count;
  }

  /** Counts something in each grip by itself; the count ignores the grip before. */
  static BoundedCount ofGrips(int target, Count count) {
    return new BoundedCount(target, false, count);
  }

  /** Counts something in each transition from one grip to the next. */
  static BoundedCount ofTransitions(int target, Count count) {
    return new BoundedCount(target, true, count);
  }

  @Override
  public int states() {
    return target + 1;
  }

  @Override
  public boolean looksBack() {
    return looksBack;
  }

  @Override
  public long symbols() {
    return target + 1L;
  }

  @Override
  public long symbol(int moment, Grip before, Grip now) {
    return Math.min(target, count.at(moment, before, now));
  }

  @Override
  public int next(int state, long symbol) {
    return (int) Math.min(target, state + symbol);
  }

  @Override
  public boolean satisfied(int state) {
    return state == target;
  }
}
