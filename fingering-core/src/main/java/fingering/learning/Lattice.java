package fingering.learning;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.scoring.CostRule;
import fingering.scoring.PacedNote;
import fingering.scoring.TimedTransition;

/**
 * The layered graph of some music with what every rule finds at every node and edge, as numbers of
 * bundles: 4 bytes an edge. Arrays are not copied; nobody changes them.
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

  /** Measures the music once by every rule. */
  static Lattice of(
      ImmutableList<Moment> moments,
      ImmutableList<ImmutableList<Grip>> grips,
      ImmutableList<CostRule> rules) {
    Measuring measuring = new Measuring(rules);
    int[][] nodes = new int[moments.size()][];
    int[][] edges = new int[moments.size()][];
    for (int m = 0; m < nodes.length; m++) {
      nodes[m] = measuring.nodes(PacedNote.of(moments.get(m)), grips.get(m));
      edges[m] =
          m == 0
              ? new int[0]
              : measuring.edges(
                  TimedTransition.between(moments.get(m - 1), moments.get(m)),
                  grips.get(m - 1),
                  grips.get(m));
    }
    return new Lattice(measuring.table.build(), nodes, edges);
  }

  private static final class Measuring {
    private final ImmutableList<CostRule> rules;
    private final AmountTable.Builder table = new AmountTable.Builder();
    private final int[] pairs;
    private int filled;

    Measuring(ImmutableList<CostRule> rules) {
      this.rules = rules;
      pairs = new int[2 * rules.size()];
    }

    int[] nodes(PacedNote note, ImmutableList<Grip> grips) {
      int[] numbers = new int[grips.size()];
      for (int j = 0; j < numbers.length; j++) {
        for (int r = 0; r < rules.size(); r++) {
          found(r, note.amount(rules.get(r), grips.get(j)));
        }
        numbers[j] = bundle();
      }
      return numbers;
    }

    int[] edges(TimedTransition transition, ImmutableList<Grip> before, ImmutableList<Grip> now) {
      int[] numbers = new int[before.size() * now.size()];
      for (int e = 0; e < numbers.length; e++) {
        Grip left = before.get(e / now.size());
        Grip reached = now.get(e % now.size());
        for (int r = 0; r < rules.size(); r++) {
          found(r, transition.amount(rules.get(r), left, reached));
        }
        numbers[e] = bundle();
      }
      return numbers;
    }

    private void found(int rule, long amount) {
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
   * The bundle of each way to a moment, from the second: grip before times number of grips now,
   * plus grip now.
   */
  int[] edges(int moment) {
    return edges[moment];
  }
}
