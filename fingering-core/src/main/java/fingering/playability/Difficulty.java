package fingering.playability;

import com.google.common.collect.ImmutableList;

/**
 * How hard a part is, from 1 to 10. It is reckoned on the fingering that is easiest for the level,
 * whatever the level's limits are.
 *
 * @param components what makes it hard or easy, the hardest first
 */
public record Difficulty(ImmutableList<Component> components) {
  /** The hardest sides of a part that count. */
  private static final int COUNT = 3;

  private static final double MOST = 10;

  /** How a grade comes about, in one sentence. */
  public static final String EXPLANATION =
      "A part is as hard as its three hardest sides: the grade is the mean of their grades.";

  /**
   * A side of a part.
   *
   * @param id stable name in data: {@code highest-position}
   * @param name what it is, a few words
   * @param explanation how it is graded, in one sentence
   * @param amount how much there is of it, in words: {@code 5th position}, {@code 3.2 a measure}
   * @param grade its grade, 1 to 10
   */
  public record Component(String id, String name, String explanation, String amount, double grade) {
    /**
     * Checks the components.
     *
     * @throws IllegalArgumentException if the grade lies out of its range
     */
    public Component {
      if (!(grade >= 1 && grade <= MOST)) {
        throw new IllegalArgumentException("a grade of " + grade + " for " + id);
      }
    }
  }

  /** The grade, 1 to 10, unrounded. */
  public double exact() {
    return components.stream().limit(COUNT).mapToDouble(Component::grade).average().orElse(1);
  }

  /** The grade, 1 to 10. */
  public int grade() {
    return (int) Math.round(exact());
  }
}
