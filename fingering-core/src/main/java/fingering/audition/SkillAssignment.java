package fingering.audition;

import com.google.common.collect.ImmutableList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Chooses one option for each piece so that together they reach all target levels at the least
 * cost. The result is exact: dynamic programming over the pieces, as for the multiple-choice
 * knapsack problem, with the least cost of each combination of levels reached so far. At equal cost
 * the earlier option of the last piece wins, then that of the piece before it, and so on.
 */
final class SkillAssignment {
  /**
   * An option of a piece.
   *
   * @param combination number of the combination of levels that it reaches
   * @param cost its cost, 0 or more
   */
  record Option(int combination, long cost) {}

  /**
   * A choice of options.
   *
   * @param chosen index of the chosen option, by piece
   * @param cost the total cost
   */
  record Assignment(ImmutableList<Integer> chosen, long cost) {}

  private static final int NOT_REACHED = -1;

  private SkillAssignment() {}

  /**
   * The cheapest assignment that reaches the targets; empty if there is none.
   *
   * @param pieces the options of each piece
   * @param mostCost the highest cost of an assignment to consider
   */
  static Optional<Assignment> cheapest(
      LevelCombinations combinations, List<ImmutableList<Option>> pieces, long mostCost) {
    long[] costs = new long[combinations.size()];
    Arrays.fill(costs, NOT_REACHED);
    costs[0] = 0;
    int[][] previous = new int[pieces.size()][combinations.size()];
    int[][] chosen = new int[pieces.size()][combinations.size()];
    for (int i = 0; i < pieces.size(); i++) {
      long[] next = new long[combinations.size()];
      Arrays.fill(next, NOT_REACHED);
      ImmutableList<Option> options = pieces.get(i);
      for (int o = 0; o < options.size(); o++) {
        for (int c = 0; c < costs.length; c++) {
          long cost = costs[c] + options.get(o).cost();
          if (costs[c] != NOT_REACHED && cost <= mostCost) {
            int sum = combinations.sum(c, options.get(o).combination());
            if (next[sum] == NOT_REACHED || cost < next[sum]) {
              next[sum] = cost;
              previous[i][sum] = c;
              chosen[i][sum] = o;
            }
          }
        }
      }
      costs = next;
    }
    int target = combinations.size() - 1;
    return costs[target] == NOT_REACHED
        ? Optional.empty()
        : Optional.of(new Assignment(trace(previous, chosen, target), costs[target]));
  }

  /** The chosen options, traced back from the target. */
  private static ImmutableList<Integer> trace(int[][] previous, int[][] chosen, int target) {
    Integer[] options = new Integer[previous.length];
    int combination = target;
    for (int i = previous.length - 1; i >= 0; i--) {
      options[i] = chosen[i][combination];
      combination = previous[i][combination];
    }
    return ImmutableList.copyOf(options);
  }
}
