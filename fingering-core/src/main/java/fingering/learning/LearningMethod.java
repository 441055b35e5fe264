package fingering.learning;

import com.google.common.collect.ImmutableList;
import fingering.tables.FingeringException;

/**
 * How weights are learned.
 *
 * @param strength the strength of the regularization towards the start weights, 0 to {@value
 *     #MAX_STRENGTH}. Half of it times the squared change in the logarithm of a weight is added to
 *     the expected number of different notes per hundred, summed over the pieces
 * @param habit whether to learn a habit too; it is kept only if it helps with other pieces
 * @param habitStrength the strength of the regularization of the habit, 0 or more
 * @param likelihood the share of the likelihood in the objective, 0 to 1; the rest is the expected
 *     difference from the print
 * @param tempi the tempi at which each piece is learned, as multiples of its own, all with equal
 *     weight; the same fingering should serve at all of them
 */
public record LearningMethod(
    double strength,
    boolean habit,
    double habitStrength,
    double likelihood,
    ImmutableList<Double> tempi) {
  /** The default strength of the regularization towards the start weights. */
  public static final double STRENGTH = 30;

  /** The highest strength. */
  public static final double MAX_STRENGTH = 1_000_000;

  /** The strength of the regularization of a habit; chosen by cross-validation. */
  private static final double HABIT_STRENGTH = 40;

  /** The share of the likelihood when a habit is learned; chosen by cross-validation. */
  private static final double LIKELIHOOD = 0.3;

  private static final ImmutableList<Double> OWN_TEMPO = ImmutableList.of(1.0);
  private static final ImmutableList<Double> MANY_TEMPI = ImmutableList.of(0.5, 1.0, 2.0);

  /**
   * Checks the components.
   *
   * @throws FingeringException if the strength is out of range
   */
  public LearningMethod {
    if (!(strength >= 0 && strength <= MAX_STRENGTH)) {
      throw new FingeringException(
          "a strength of %s is out of range; give 0 to %.0f".formatted(strength, MAX_STRENGTH));
    }
  }

  /** Learns the weights of the rules only, by minimum risk; right for a teacher's own few parts. */
  public static LearningMethod rules(double strength) {
    return new LearningMethod(strength, false, 0, 0, OWN_TEMPO);
  }

  /** Learns a habit too; needs thousands of fingered notes of many pieces. */
  public static LearningMethod rulesAndHabit(double strength) {
    return new LearningMethod(strength, true, HABIT_STRENGTH, LIKELIHOOD, MANY_TEMPI);
  }

  /** The same method without a habit. */
  LearningMethod withoutHabit() {
    return new LearningMethod(strength, false, 0, likelihood, tempi);
  }
}
