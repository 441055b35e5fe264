package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;

/**
 * What a whole path must show, as a small automaton that reads the path grip by grip. The search
 * carries its state, so that the cheapest path that satisfies it is found exactly and never mended
 * afterwards.
 */
public interface Requirement {
  /** Requires nothing. */
  Requirement NONE =
      new Requirement() {
        @Override
        public int states() {
          return 1;
        }

        @Override
        public long symbols() {
          return 1;
        }

        @Override
        public long symbol(int moment, Grip before, Grip now) {
          return 0;
        }

        @Override
        public int next(int state, long symbol) {
          return 0;
        }

        @Override
        public boolean satisfied(int state) {
          return true;
        }
      };

  /** How many states there are; a path begins in state 0 before its first grip. */
  int states();

  /** Whether the symbol depends on the grip before, and not on the one reached alone. */
  default boolean looksBack() {
    return false;
  }

  /** How many symbols there are: all that the automaton can tell apart at one moment. */
  long symbols();

  /**
   * What the automaton reads at a grip.
   *
   * @param moment index of its moment in the passage, from 0
   * @param before the grip before; at the first moment the grip itself
   * @param now the grip
   * @return 0 to {@link #symbols()} - 1
   */
  long symbol(int moment, Grip before, Grip now);

  /** The state after a symbol. */
  int next(int state, long symbol);

  /** The requirements of which it consists; itself where it is one. */
  default ImmutableList<Requirement> parts() {
    return ImmutableList.of(this);
  }

  /** Whether a path that ends in that state has shown what is required. */
  boolean satisfied(int state);
}
