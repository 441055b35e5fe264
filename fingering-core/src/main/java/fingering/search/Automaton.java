package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import java.util.HashMap;
import java.util.Map;

/** A requirement at work: which state follows which, looked up and not asked for again. */
final class Automaton {
  private final LayeredGraph layers;
  private final Requirement requirement;
  private final Map<Long, int[]> next = new HashMap<>();

  /** By moment, {@link #after(int)}; those not asked for yet are missing. */
  private final int[][][] all;

  Automaton(LayeredGraph layers, Requirement requirement) {
    this.layers = layers;
    this.requirement = requirement;
    all = new int[layers.moments().size()][][];
  }

  int states() {
    return requirement.states();
  }

  boolean looksBack() {
    return requirement.looksBack();
  }

  boolean satisfied(int state) {
    return requirement.satisfied(state);
  }

  /**
   * By state, the state after a grip of a moment; at the first moment the grip is its own before.
   */
  int[] after(int moment, Grip before, Grip now) {
    return next.computeIfAbsent(requirement.symbol(moment, before, now), this::table);
  }

  /** By grip of a moment, the states after it, whatever the grip before. */
  int[][] after(int moment) {
    if (all[moment] == null) {
      ImmutableList<Grip> grips = layers.grips().get(moment);
      all[moment] = new int[grips.size()][];
      for (int j = 0; j < grips.size(); j++) {
        all[moment][j] = after(moment, grips.get(j), grips.get(j));
      }
    }
    return all[moment];
  }

  private int[] table(long symbol) {
    int[] table = new int[requirement.states()];
    for (int s = 0; s < table.length; s++) {
      table[s] = requirement.next(s, symbol);
    }
    return table;
  }
}
