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

  /**
   * Indexed by moment and grip: the state after it by state before, if the requirement does not
   * look back; null where not computed yet.
   */
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

  /** The state after a grip of the first moment. */
  int first(int grip) {
    Grip now = graph.grips().get(0).get(grip);
    return table(0, now, now)[0];
  }

  /**
   * Indexed by state: the state after a grip of a moment. Callers must not change the array.
   *
   * @param moment the moment, from the second
   * @param before index of the grip before
   * @param now index of the grip
   */
  int[] after(int moment, int before, int now) {
    ImmutableList<Grip> grips = graph.grips().get(moment);
    if (looksBack()) {
      return table(moment, graph.grips().get(moment - 1).get(before), grips.get(now));
    }
    if (byGrip[moment] == null) {
      byGrip[moment] = new int[grips.size()][];
    }
    int[] known = byGrip[moment][now];
    if (known == null) {
      known = table(moment, grips.get(now), grips.get(now));
      byGrip[moment][now] = known;
    }
    return known;
  }

  private int[] table(int moment, Grip before, Grip now) {
    return tables.computeIfAbsent(requirement.symbol(moment, before, now), this::table);
  }

  private int[] table(long symbol) {
    int[] table = new int[requirement.states()];
    for (int s = 0; s < table.length; s++) {
      table[s] = requirement.next(s, symbol);
    }
    return table;
  }
}
