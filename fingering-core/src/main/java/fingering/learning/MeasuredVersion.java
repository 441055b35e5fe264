package fingering.learning;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.LeftHand;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.Planner;
import fingering.scoring.CostRule;
import fingering.scoring.Scoring;
import java.util.Arrays;
import java.util.List;

/**
 * One version of a piece, for example with one bowing, with the fingerings that players printed.
 */
final class MeasuredVersion {
  /** The factor of a grip that is not as printed; not 0, so that every path stays possible. */
  private static final double UNLIKE = 1e-30;

  private final ImmutableList<TrainingExample> examples;
  private final Planner planner;
  private final Lattice lattice;
  private final double[][] losses;
  private final HabitInputs habit;

  /** For each player, {@link #asPrinted}. */
  private final ImmutableList<double[][]> printed;

  private MeasuredVersion(
      ImmutableList<TrainingExample> examples,
      Planner planner,
      Lattice lattice,
      double[][] losses,
      HabitInputs habit,
      ImmutableList<double[][]> printed) {
    this.examples = examples;
    this.planner = planner;
    this.lattice = lattice;
    this.losses = losses;
    this.habit = habit;
    this.printed = printed;
  }

  /**
   * The version of some examples that differ only in printed fingers and strings, without notes out
   * of the instrument's range.
   */
  static MeasuredVersion of(List<TrainingExample> examples, Scoring scoring, LeftHand hand) {
    Planner planner = Planner.of(examples.get(0).passage(), scoring, hand);
    ImmutableList<CostRule> rules = scoring.rules();
    return new MeasuredVersion(
        ImmutableList.copyOf(examples),
        planner,
        Lattice.of(examples.get(0).passage().moments(), planner.grips(), rules),
        losses(examples, planner.grips()),
        HabitInputs.of(examples.get(0).passage().moments(), planner.grips()),
        examples.stream()
            .map(example -> asPrinted(example, planner.grips()))
            .collect(ImmutableList.toImmutableList()));
  }

  /** The number of players who fingered it. */
  int players() {
    return examples.size();
  }

  int moments() {
    return lattice.moments();
  }

  boolean occurs(int rule) {
    return lattice.table().occurs(rule);
  }

  /** The loss of each grip of each moment, summed over the players. */
  private static double[][] losses(
      List<TrainingExample> examples, ImmutableList<ImmutableList<Grip>> grips) {
    double[][] losses =
        grips.stream().map(some -> new double[some.size()]).toArray(double[][]::new);
    for (TrainingExample example : examples) {
      example.addLosses(grips, losses);
    }
    return losses;
  }

  /**
   * The objective, summed over the players: the expected loss of a path, mixed with the negative
   * log likelihood of the print.
   *
   * @param likelihood the share of the likelihood, 0 to 1
   * @param weights the weights of the rules in natural units
   * @param network the numbers of the habit network; none to learn without one
   * @param gradient receives, in addition to its values, the gradient by the logarithm of each
   *     weight, then by each number of the network
   */
  double objective(double likelihood, double[] weights, double[] network, double[] gradient) {
    AmountTable table = lattice.table();
    double[] factors = table.factors(weights);
    double[][] own = habit.factors(network, losses);
    Slopes slopes = new Slopes(table.size(), losses);
    double value = 0;
    if (likelihood < 1) {
      slopes.addNow(likelihood - 1);
      value += (1 - likelihood) * ForwardBackward.expected(lattice, factors, own, losses, slopes);
    }
    if (likelihood > 0) {
      slopes.addNow(-likelihood * examples.size());
      value += likelihood * examples.size() * ForwardBackward.logSum(lattice, factors, own, slopes);
      slopes.addNow(likelihood);
      for (double[][] unlike : printed) {
        double[][] kept = times(own, unlike);
        value -= likelihood * ForwardBackward.logSum(lattice, factors, kept, slopes);
      }
    }
    table.addGradient(slopes.byBundle(), weights, gradient);
    habit.addGradient(network, slopes.byScore(), gradient, weights.length);
    return value;
  }

  private static double[][] times(double[][] some, double[][] others) {
    double[][] product = new double[some.length][];
    for (int m = 0; m < some.length; m++) {
      product[m] = new double[some[m].length];
      for (int j = 0; j < product[m].length; j++) {
        product[m][j] = some[m][j] * others[m][j];
      }
    }
    return product;
  }

  /** The factor of each grip of each moment: 1 if it is as printed as possible, else nearly 0. */
  private static double[][] asPrinted(
      TrainingExample example, ImmutableList<ImmutableList<Grip>> grips) {
    double[][] factors = losses(List.of(example), grips);
    for (double[] moment : factors) {
      double least = Arrays.stream(moment).min().orElse(0);
      for (int j = 0; j < moment.length; j++) {
        moment[j] = moment[j] <= least ? 1 : UNLIKE;
      }
    }
    return factors;
  }

  /** The agreement of the cheapest plan with each player. */
  ImmutableList<Agreement> agreements(Scoring scoring) {
    Plan plan = planner.withScoring(scoring).plan(Brief.free("free choice"));
    return examples.stream()
        .map(example -> Agreement.of(plan, example.passage()))
        .collect(ImmutableList.toImmutableList());
  }
}
