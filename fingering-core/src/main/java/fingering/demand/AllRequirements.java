package fingering.demand;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.search.Requirement;
import fingering.tables.FingeringException;

/** The product automaton of several requirements; it is satisfied if all of them are. */
public final class AllRequirements implements Requirement {
  /** The most states of the product automaton. */
  public static final int MAX_STATES = 20_000;

  private final ImmutableList<Requirement> all;
  private final int states;

  private AllRequirements(ImmutableList<Requirement> all, int states) {
    this.all = all;
    this.states = states;
  }

  /**
   * A requirement that is satisfied if all of these are.
   *
   * @throws FingeringException if the product automaton has more than {@value #MAX_STATES} states
   */
  public static Requirement of(ImmutableList<Requirement> all) {
    long states = 1;
    for (Requirement each : all) {
      states *= each.states();
      if (states > MAX_STATES) {
        throw new FingeringException(
            "These demands are too many for one plan: the search would have to distinguish more than "
                + MAX_STATES
                + " cases at every note; ask for fewer notes or fewer skills at once.");
      }
    }
    if (all.isEmpty()) {
      return Requirement.NONE;
    }
    return all.size() == 1 ? all.get(0) : new AllRequirements(all, (int) states);
  }

  @Override
  public int states() {
    return states;
  }

  @Override
  public ImmutableList<Requirement> parts() {
    return all;
  }

  @Override
  public boolean looksBack() {
    return all.stream().anyMatch(Requirement::looksBack);
  }

  @Override
  public long symbols() {
    return all.stream().mapToLong(Requirement::symbols).reduce(1, Math::multiplyExact);
  }

  @Override
  public long symbol(int moment, Grip before, Grip now) {
    long symbol = 0;
    long unit = 1;
    for (Requirement each : all) {
      symbol += each.symbol(moment, before, now) * unit;
      unit *= each.symbols();
    }
    return symbol;
  }

  @Override
  public int next(int state, long symbol) {
    int states = state;
    long symbols = symbol;
    int next = 0;
    int unit = 1;
    for (Requirement each : all) {
      next += each.next(states % each.states(), symbols % each.symbols()) * unit;
      states /= each.states();
      symbols /= each.symbols();
      unit *= each.states();
    }
    return next;
  }

  @Override
  public boolean satisfied(int state) {
    int left = state;
    for (Requirement each : all) {
      if (!each.satisfied(left % each.states())) {
        return false;
      }
      left /= each.states();
    }
    return true;
  }
}
