package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import java.util.HashMap;
import java.util.Map;

/** The transition function of a requirement on a graph, as tables that are filled on demand. */
final class Automaton {
  private final LayeredGraph graph;
  private final Requirement requirement;
  private final Map<Long, int[]> tables = new HashMap<>();

  /** Indexed by moment: {@link #after(int)}; null where not computed yet. */
  private final int[][][] byGrip;

  Automaton(LayeredGraph graph, Requirement requirement) {
    this.graph = graph;
    this.requirement = requirement;
    byGrip = new int[graph.moments().size()][][];
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
   * Indexed by state: the state after a grip of a moment. At the first moment pass the grip as
   * {@code before} too.
   */
  int[] after(int moment, Grip before, Grip now) {
    return tables.computeIfAbsent(requirement.symbol(moment, before, now), this::table);
  }

  /**
   * Indexed by grip of a moment, then by state: the state after it, if the requirement does not
   * look back.
   */
  int[][] after(int moment) {
    if (byGrip[moment] == null) {
      ImmutableList<Grip> grips = graph.grips().get(moment);
      byGrip[moment] = new int[grips.size()][];
      for (int j = 0; j < grips.size(); j++) {
        byGrip[moment][j] = after(moment, grips.get(j), grips.get(j));
      }
    }
    return byGrip[moment];
  }

  private int[] table(long symbol) {
    int[] table = new int[requirement.states()];
    for (int s = 0; s < table.length; s++) {
      table[s] = requirement.next(s, symbol);
    }
    return table;
  }
}
