package fingering.audition;

import com.google.common.collect.ImmutableList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Chooses one possibility for each piece so that together they reach the top of all steps at the
 * least cost, exactly, by dynamic programming over the pieces: what has been reached so far, at
 * what least cost. Among equals the possibility that stands earlier in the list of the last piece
 * wins, then of the one before it, and so on.
 */
final class SkillAssignment {
  /**
   * What a piece can do.
   *
   * @param reached the number of the steps that it reaches
   * @param cost what that costs, 0 or more
   */
  record Possibility(int reached, long cost) {}

  /**
   * The choice.
   *
   * @param chosen index of the possibility of each piece
   * @param cost of all together
   */
  record Choice(ImmutableList<Integer> chosen, long cost) {}

  private static final int NOT_REACHED = -1;

  private SkillAssignment() {}

  /**
   * The cheapest choice; empty where none reaches the top.
   *
   * @param most choices that cost more than this are not looked for
   */
  static Optional<Choice> cheapest(
      SkillLevels steps, List<ImmutableList<Possibility>> pieces, long most) {
    long[] costs = new long[steps.size()];
    Arrays.fill(costs, NOT_REACHED);
    costs[0] = 0;
    int[][] from = new int[pieces.size()][steps.size()];
    int[][] by = new int[pieces.size()][steps.size()];
    for (int i = 0; i < pieces.size(); i++) {
      long[] next = new long[steps.size()];
      Arrays.fill(next, NOT_REACHED);
      ImmutableList<Possibility> all = pieces.get(i);
      for (int p = 0; p < all.size(); p++) {
        for (int s = 0; s < costs.length; s++) {
          long cost = costs[s] + all.get(p).cost();
          if (costs[s] != NOT_REACHED && cost <= most) {
            int to = steps.together(s, all.get(p).reached());
            if (next[to] == NOT_REACHED || cost < next[to]) {
              next[to] = cost;
              from[i][to] = s;
              by[i][to] = p;
            }
          }
        }
      }
      costs = next;
    }
    int top = steps.size() - 1;
    return costs[top] == NOT_REACHED
        ? Optional.empty()
        : Optional.of(new Choice(back(from, by, top), costs[top]));
  }

  private static ImmutableList<Integer> back(int[][] from, int[][] by, int top) {
    Integer[] chosen = new Integer[from.length];
    int at = top;
    for (int i = from.length - 1; i >= 0; i--) {
      chosen[i] = by[i][at];
      at = from[i][at];
    }
    return ImmutableList.copyOf(chosen);
  }
}
