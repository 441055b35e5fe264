package fingering.learning;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.scoring.CostRule;
import fingering.scoring.NoteContext;
import fingering.scoring.Scoring;
import fingering.scoring.TimedTransition;

/**
 * The layered graph of a passage with the amounts of all rules at each node and edge, as numbers of
 * bundles in an {@link AmountTable}: 4 bytes for each edge. Returned arrays are not copies and must
 * not be changed.
 */
final class Lattice {
  private final AmountTable table;
  private final int[][] nodes;
  private final int[][] edges;

  private Lattice(AmountTable table, int[][] nodes, int[][] edges) {
    this.table = table;
    this.nodes = nodes;
    this.edges = edges;
  }

  /** Applies every rule to every node and edge. */
  static Lattice of(
      ImmutableList<Moment> moments,
      ImmutableList<ImmutableList<Grip>> grips,
      ImmutableList<CostRule> rules) {
    Measurement measurement = new Measurement(rules);
    int[][] nodes = new int[moments.size()][];
    int[][] edges = new int[moments.size()][];
    for (int m = 0; m < nodes.length; m++) {
      nodes[m] = measurement.nodes(NoteContext.of(moments.get(m)), grips.get(m));
      edges[m] =
          m == 0
              ? new int[0]
              : measurement.edges(
                  TimedTransition.between(moments.get(m - 1), moments.get(m)),
                  grips.get(m - 1),
                  grips.get(m));
    }
    return new Lattice(measurement.table.build(), nodes, edges);
  }

  private static final class Measurement {
    private final ImmutableList<CostRule> rules;
    private final AmountTable.Builder table = new AmountTable.Builder();
    private final int[] pairs;
    private int filled;

    Measurement(ImmutableList<CostRule> rules) {
      this.rules = rules;
      pairs = new int[2 * rules.size()];
    }

    int[] nodes(NoteContext context, ImmutableList<Grip> grips) {
      int[] numbers = new int[grips.size()];
      for (int j = 0; j < numbers.length; j++) {
        for (int r = 0; r < rules.size(); r++) {
          add(r, Scoring.amount(rules.get(r), context, grips, grips.get(j)));
        }
        numbers[j] = bundle();
      }
      return numbers;
    }

    int[] edges(TimedTransition transition, ImmutableList<Grip> before, ImmutableList<Grip> now) {
      int[] numbers = new int[before.size() * now.size()];
      for (int e = 0; e < numbers.length; e++) {
        Grip from = before.get(e / now.size());
        Grip to = now.get(e % now.size());
        for (int r = 0; r < rules.size(); r++) {
          add(r, transition.amount(rules.get(r), from, to));
        }
        numbers[e] = bundle();
      }
      return numbers;
    }

    private void add(int rule, long amount) {
      if (amount > 0) {
        pairs[filled++] = rule;
        pairs[filled++] = Math.toIntExact(amount);
      }
    }

    private int bundle() {
      int number = table.add(pairs, filled);
      filled = 0;
      return number;
    }
  }

  AmountTable table() {
    return table;
  }

  int moments() {
    return nodes.length;
  }

  /** The bundle of each grip of a moment. */
  int[] nodes(int moment) {
    return nodes[moment];
  }

  /**
   * The bundle of each edge to a moment. The index of an edge is the index of the grip before times
   * the number of grips now, plus the index of the grip now. There are none to the first moment.
   */
  int[] edges(int moment) {
    return edges[moment];
  }
}
