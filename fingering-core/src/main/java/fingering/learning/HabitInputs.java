package fingering.learning;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableIntArray;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.scoring.Habit;
import fingering.scoring.HabitNetwork;
import fingering.scoring.NoteContext;

/**
 * The inputs of the habit networks at every grip of a passage.
 *
 * @param families the network of each moment
 * @param lines the inputs by the line of each moment
 * @param placements the inputs by each grip of each moment; none where no network applies
 */
record HabitInputs(
    ImmutableList<Habit.Family> families,
    ImmutableList<ImmutableIntArray> lines,
    ImmutableList<ImmutableList<ImmutableIntArray>> placements) {

  static HabitInputs of(ImmutableList<Moment> moments, ImmutableList<ImmutableList<Grip>> grips) {
    ImmutableList.Builder<Habit.Family> families = ImmutableList.builder();
    ImmutableList.Builder<ImmutableIntArray> lines = ImmutableList.builder();
    ImmutableList.Builder<ImmutableList<ImmutableIntArray>> placements = ImmutableList.builder();
    for (int m = 0; m < moments.size(); m++) {
      NoteContext context = NoteContext.of(moments.get(m));
      Habit.Family family = Habit.family(context, grips.get(m));
      families.add(family);
      lines.add(HabitNetwork.inputs(context.line()));
      placements.add(
          family == Habit.Family.NONE
              ? ImmutableList.of()
              : grips.get(m).stream()
                  .map(grip -> HabitNetwork.inputs(grip.top()))
                  .collect(ImmutableList.toImmutableList()));
    }
    return new HabitInputs(families.build(), lines.build(), placements.build());
  }

  /** The factor exp(score) of each grip of each moment. */
  double[][] factors(double[] violin, double[] cello, ImmutableList<ImmutableList<Grip>> grips) {
    double[][] factors = new double[families.size()][];
    for (int m = 0; m < factors.length; m++) {
      double[] own = new double[grips.get(m).size()];
      factors[m] = own;
      if (families.get(m) == Habit.Family.NONE) {
        java.util.Arrays.fill(own, 1);
        continue;
      }
      double[] numbers = families.get(m) == Habit.Family.VIOLIN ? violin : cello;
      double[] sums = HabitNetwork.sums(numbers, lines.get(m));
      double best = Double.NEGATIVE_INFINITY;
      for (int j = 0; j < own.length; j++) {
        own[j] = HabitNetwork.score(numbers, sums, placements.get(m).get(j));
        best = Math.max(best, own[j]);
      }
      for (int j = 0; j < own.length; j++) {
        own[j] = Math.exp(Math.max(-50, own[j] - best));
      }
    }
    return factors;
  }

  /**
   * Adds the derivative of the objective by each number of the networks.
   *
   * @param slopes the derivative by the score of each grip of each moment
   * @param first index of the first number in the gradient
   */
  void addGradient(
      double[] violin, double[] cello, double[][] slopes, double[] gradient, int first) {
    for (int m = 0; m < slopes.length; m++) {
      if (families.get(m) == Habit.Family.NONE) {
        continue;
      }
      boolean isViolin = families.get(m) == Habit.Family.VIOLIN;
      double[] numbers = isViolin ? violin : cello;
      double[] sums = HabitNetwork.sums(numbers, lines.get(m));
      for (int j = 0; j < slopes[m].length; j++) {
        if (Math.abs(slopes[m][j]) > 1e-9) {
          HabitNetwork.addGradient(
              numbers,
              lines.get(m),
              sums,
              placements.get(m).get(j),
              slopes[m][j],
              gradient,
              isViolin ? first : first + HabitNetwork.SIZE);
        }
      }
    }
  }
}
