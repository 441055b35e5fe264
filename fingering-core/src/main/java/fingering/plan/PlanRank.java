package fingering.plan;

/** Names of plans by rank. */
public final class PlanRank {
  private PlanRank() {}

  /**
   * The name of a plan by its rank: {@code best}, {@code 2nd}, {@code 3rd}.
   *
   * @param rank the rank, from 1
   */
  public static String name(int rank) {
    return rank == 1 ? "best" : ordinal(rank);
  }

  private static String ordinal(int number) {
    int last = number / 10 % 10 == 1 ? 0 : number % 10;
    return number + (last == 1 ? "st" : last == 2 ? "nd" : last == 3 ? "rd" : "th");
  }
}
