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

/** One music, measured once, with all the fingerings that players gave it. */
final class MeasuredPiece {
  private final ImmutableList<TrainingExample> examples;
  private final Planner planner;
  private final Lattice lattice;
  private final double[][] losses;

  private MeasuredPiece(
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
   * Measures the music of some examples that differ in nothing but printed fingers and strings.
   *
   * @throws fingering.plan.InfeasibleBriefException if a note lies out of the instrument's range
   */
  static MeasuredPiece of(List<TrainingExample> examples, Scoring scoring, LeftHand hand) {
    Planner planner = Planner.of(examples.get(0).passage(), scoring, hand);
    ImmutableList<CostRule> rules = scoring.rules();
    return new MeasuredPiece(
        ImmutableList.copyOf(examples),
        planner,
        Lattice.of(examples.get(0).passage().moments(), planner.grips(), rules),
        losses(examples, planner.grips()));
  }

  /** How many players fingered it. */
  int players() {
    return examples.size();
  }

  int moments() {
    return lattice.moments();
  }

  boolean occurs(int rule) {
    return lattice.table().occurs(rule);
  }

  /** What each grip of each moment differs from the print, added up over the players. */
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
   * How far a path is expected to differ from what the players printed, added up over the players.
   *
   * @param weights of the rules, in natural units
   * @param gradient is added the gradient by the logarithm of each weight
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

  /** The agreement of the free plan with each player. */
  ImmutableList<Agreement> agreements(Scoring scoring) {
    Plan plan = planner.scoredBy(scoring).plan(Brief.free("free choice"));
    return examples.stream()
        .map(example -> Agreement.of(plan, example.passage()))
        .collect(ImmutableList.toImmutableList());
  }
}
