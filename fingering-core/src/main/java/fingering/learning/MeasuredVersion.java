package fingering.learning;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.LeftHand;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.Planner;
import fingering.scoring.CostRule;
import fingering.scoring.Scoring;
import java.util.List;

/**
 * One version of a piece, for example with one bowing, with the fingerings that players printed.
 */
final class MeasuredVersion {
  private final ImmutableList<TrainingExample> examples;
  private final Planner planner;
  private final Lattice lattice;
  private final double[][] losses;

  private MeasuredVersion(
      ImmutableList<TrainingExample> examples,
      Planner planner,
      Lattice lattice,
      double[][] losses) {
    this.examples = examples;
    this.planner = planner;
    this.lattice = lattice;
    this.losses = losses;
  }

  /**
   * The version of some examples that differ only in printed fingers and strings.
   *
   * @throws fingering.plan.InfeasibleBriefException if a note is out of the instrument's range
   */
  static MeasuredVersion of(List<TrainingExample> examples, Scoring scoring, LeftHand hand) {
    Planner planner = Planner.of(examples.get(0).passage(), scoring, hand);
    ImmutableList<CostRule> rules = scoring.rules();
    return new MeasuredVersion(
        ImmutableList.copyOf(examples),
        planner,
        Lattice.of(examples.get(0).passage().moments(), planner.grips(), rules),
        losses(examples, planner.grips()));
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
   * The expected loss of a path, summed over the players.
   *
   * @param weights the weights of the rules in natural units
   * @param gradient receives, in addition to its values, the gradient by the logarithm of each
   *     weight
   */
  double expectedLoss(double[] weights, double[] gradient) {
    AmountTable table = lattice.table();
    double[] slopes = new double[table.size()];
    double expected = ForwardBackward.expected(lattice, table.factors(weights), losses, slopes);
    for (int k = 0; k < slopes.length; k++) {
      slopes[k] = -slopes[k];
    }
    table.addGradient(slopes, weights, gradient);
    return expected;
  }

  /** The agreement of the cheapest plan with each player. */
  ImmutableList<Agreement> agreements(Scoring scoring) {
    Plan plan = planner.withScoring(scoring).plan(Brief.free("free choice"));
    return examples.stream()
        .map(example -> Agreement.of(plan, example.passage()))
        .collect(ImmutableList.toImmutableList());
  }
}
