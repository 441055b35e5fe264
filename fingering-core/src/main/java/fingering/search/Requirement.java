package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;

/**
 * A constraint on a whole path, as a small deterministic automaton that reads the path grip by
 * grip. The search runs on the product of graph and automaton, so it finds the cheapest path that
 * satisfies the constraint exactly.
 */
public interface Requirement {
  /** No constraint: a single state, which satisfies it. */
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

  /** The number of states. A path starts in state 0, before its first grip. */
  int states();

  /** Whether the symbol depends on the previous grip too. */
  default boolean looksBack() {
    return false;
  }

  /** The number of symbols. */
  long symbols();

  /**
   * The symbol that the automaton reads at a grip.
   *
   * @param moment index of the moment in the passage, from 0
   * @param before the previous grip; at the first moment the grip itself
   * @param now the grip
   * @return 0 to {@link #symbols()} - 1
   */
  long symbol(int moment, Grip before, Grip now);

  /** The state that a symbol leads to. */
  int next(int state, long symbol);

  /** The requirements that this one combines; only itself if it is a single one. */
  default ImmutableList<Requirement> parts() {
    return ImmutableList.of(this);
  }

  /** Whether a path that ends in a state satisfies the requirement. */
  boolean satisfied(int state);
}
