package fingering.playability;

import com.google.common.collect.ImmutableList;

/**
 * The difficulty of a part, from 1 to 10. It is computed from the easiest fingering under the
 * weights of the level, so compare grades of one level only.
 *
 * @param components the graded components, the highest grade first
 */
public record Difficulty(ImmutableList<Component> components) {
  /** The number of highest grades that count. */
  private static final int COUNT = 3;

  private static final double MOST = 10;

  /** An explanation of the grade, in one sentence. */
  public static final String EXPLANATION =
      "The mean of the three highest grades of a part, such as those for pace or highest position.";

  /**
   * A graded component of the difficulty.
   *
   * @param id a stable name in data: {@code highest-position}
   * @param name a short name to show
   * @param explanation what is graded, in one sentence
   * @param amount the amount in words: {@code 5th position}, {@code 3.2 a measure}
   * @param grade its grade, 1 to 10
   */
  public record Component(String id, String name, String explanation, String amount, double grade) {
    /**
     * Checks the components.
     *
     * @throws IllegalArgumentException if the grade is out of range
     */
    public Component {
      if (!(grade >= 1 && grade <= MOST)) {
        throw new IllegalArgumentException("a grade of " + grade + " for " + id);
      }
    }
  }

  /** Returns the unrounded grade, 1 to 10. */
  public double exact() {
    return components.stream().limit(COUNT).mapToDouble(Component::grade).average().orElse(1);
  }

  /** Returns the grade, 1 to 10. */
  public int grade() {
    return (int) Math.round(exact());
  }
}
