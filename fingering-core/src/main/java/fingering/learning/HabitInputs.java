package fingering.learning;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableIntArray;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.scoring.Habit;
import fingering.scoring.HabitNetwork;
import fingering.scoring.NoteContext;
import java.util.Arrays;

/**
 * The inputs of the habit network at every grip of a passage.
 *
 * @param lines the inputs by the line of each moment
 * @param placements the inputs by each grip of each moment; none where the network judges nothing
 */
record HabitInputs(
    ImmutableList<ImmutableIntArray> lines,
    ImmutableList<ImmutableList<ImmutableIntArray>> placements) {
  /** Lower scores, compared with the best, count as this, so that no factor underflows. */
  private static final double LOWEST_SCORE = -50;

  /** Smaller slopes change nothing. */
  private static final double SMALL_SLOPE = 1e-9;

  static HabitInputs of(ImmutableList<Moment> moments, ImmutableList<ImmutableList<Grip>> grips) {
    ImmutableList.Builder<ImmutableIntArray> lines = ImmutableList.builder();
    ImmutableList.Builder<ImmutableList<ImmutableIntArray>> placements = ImmutableList.builder();
    for (int m = 0; m < moments.size(); m++) {
      NoteContext context = NoteContext.of(moments.get(m));
      lines.add(HabitNetwork.inputs(context.line()));
      placements.add(
          Habit.network(context, grips.get(m)).isEmpty()
              ? ImmutableList.of()
              : grips.get(m).stream()
                  .map(grip -> HabitNetwork.inputs(grip.top()))
                  .collect(ImmutableList.toImmutableList()));
    }
    return new HabitInputs(lines.build(), placements.build());
  }

  /**
   * The factor exp(score − best score) of each grip of each moment; 1 where the network judges
   * nothing.
   *
   * @param numbers the numbers of the network; none for the factors without a habit
   * @param shape an array for each moment with as many entries as grips
   */
  double[][] factors(double[] numbers, double[][] shape) {
    double[][] factors = new double[shape.length][];
    for (int m = 0; m < factors.length; m++) {
      factors[m] = new double[shape[m].length];
      Arrays.fill(factors[m], 1);
      if (numbers.length > 0 && !placements.get(m).isEmpty()) {
        score(numbers, m, factors[m]);
      }
    }
    return factors;
  }

  private void score(double[] numbers, int m, double[] factors) {
    double[] sums = HabitNetwork.sums(numbers, lines.get(m));
    double best = Double.NEGATIVE_INFINITY;
    for (int j = 0; j < factors.length; j++) {
      factors[j] = HabitNetwork.score(numbers, sums, placements.get(m).get(j));
      best = Math.max(best, factors[j]);
    }
    for (int j = 0; j < factors.length; j++) {
      factors[j] = Math.exp(Math.max(LOWEST_SCORE, factors[j] - best));
    }
  }

  /**
   * Adds the derivative of the objective by each number of the network.
   *
   * @param slopes the derivative by the score of each grip of each moment
   * @param first index of the first number in the gradient
   */
  void addGradient(double[] numbers, double[][] slopes, double[] gradient, int first) {
    for (int m = 0; m < slopes.length && numbers.length > 0; m++) {
      if (placements.get(m).isEmpty()) {
        continue;
      }
      double[] sums = HabitNetwork.sums(numbers, lines.get(m));
      for (int j = 0; j < slopes[m].length; j++) {
        if (Math.abs(slopes[m][j]) > SMALL_SLOPE) {
          HabitNetwork.addGradient(
              numbers, lines.get(m), sums, placements.get(m).get(j), slopes[m][j], gradient, first);
        }
      }
    }
  }
}
