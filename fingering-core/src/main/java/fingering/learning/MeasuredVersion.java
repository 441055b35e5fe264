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
  private final HabitInputs habit;

  private MeasuredVersion(
      ImmutableList<TrainingExample> examples,
      Planner planner,
      Lattice lattice,
      double[][] losses,
      HabitInputs habit) {
    this.examples = examples;
    this.planner = planner;
    this.lattice = lattice;
    this.losses = losses;
    this.habit = habit;
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
        losses(examples, planner.grips()),
        HabitInputs.of(examples.get(0).passage().moments(), planner.grips()));
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
  static double MIX = Double.parseDouble(System.getProperty("mix", "0"));

  double expectedLoss(double[] weights, double[] violin, double[] cello, double[] gradient) {
    AmountTable table = lattice.table();
    double[] slopes = new double[table.size()];
    double[] factors = table.factors(weights);
    double[][] own = habit.factors(violin, cello, planner.grips());
    double[][] ownSlopes = new double[own.length][];
    for (int m = 0; m < own.length; m++) {
      ownSlopes[m] = new double[own[m].length];
    }
    double expected = 0;
    if (MIX < 1) {
      expected =
          (1 - MIX) * ForwardBackward.expected(lattice, factors, own, losses, slopes, ownSlopes);
      for (int k = 0; k < slopes.length; k++) {
        slopes[k] *= -(1 - MIX);
      }
      for (double[] some : ownSlopes) {
        for (int j = 0; j < some.length; j++) {
          some[j] *= 1 - MIX;
        }
      }
    }
    if (MIX > 0) {
      // negative log likelihood: log Z - log Z(constrained)
      double[] more = new double[slopes.length];
      double[][] moreOwn = new double[own.length][];
      for (int m = 0; m < own.length; m++) {
        moreOwn[m] = new double[own[m].length];
      }
      double[] once = new double[slopes.length];
      double[][] onceOwn = new double[own.length][];
      for (int m = 0; m < own.length; m++) {
        onceOwn[m] = new double[own[m].length];
      }
      double z = ForwardBackward.logSum(lattice, factors, own, 1, once, onceOwn);
      int n = examples.size();
      double nll = n * z;
      for (int k = 0; k < more.length; k++) {
        more[k] += n * once[k];
      }
      for (int m = 0; m < own.length; m++) {
        for (int j = 0; j < own[m].length; j++) {
          moreOwn[m][j] += n * onceOwn[m][j];
        }
      }
      for (boolean[][] mask : masks()) {
        double[][] masked = new double[own.length][];
        for (int m = 0; m < own.length; m++) {
          masked[m] = own[m].clone();
          for (int j = 0; j < masked[m].length; j++) {
            if (!mask[m][j]) {
              masked[m][j] *= 1e-30;
            }
          }
        }
        nll -= ForwardBackward.logSum(lattice, factors, masked, -1, more, moreOwn);
      }
      expected += MIX * nll;
      // slopes are counts; d nll / d cost = -(count - constrained count)
      for (int k = 0; k < more.length; k++) {
        slopes[k] -= MIX * more[k];
      }
      for (int m = 0; m < own.length; m++) {
        for (int j = 0; j < own[m].length; j++) {
          ownSlopes[m][j] += MIX * moreOwn[m][j];
        }
      }
    }
    table.addGradient(slopes, weights, gradient);
    habit.addGradient(violin, cello, ownSlopes, gradient, weights.length);
    return expected;
  }

  private java.util.List<boolean[][]> cachedMasks;

  private synchronized java.util.List<boolean[][]> masks() {
    if (cachedMasks == null) {
      java.util.List<boolean[][]> all = new java.util.ArrayList<>();
      for (TrainingExample example : examples) {
        double[][] loss = losses(List.of(example), planner.grips());
        boolean[][] mask = new boolean[loss.length][];
        for (int m = 0; m < loss.length; m++) {
          mask[m] = new boolean[loss[m].length];
          double least = java.util.Arrays.stream(loss[m]).min().orElse(0);
          for (int j = 0; j < mask[m].length; j++) {
            mask[m][j] = loss[m][j] <= least;
          }
        }
        all.add(mask);
      }
      cachedMasks = all;
    }
    return cachedMasks;
  }

  /** The agreement of the cheapest plan with each player. */
  ImmutableList<Agreement> agreements(Scoring scoring) {
    Plan plan = planner.withScoring(scoring).plan(Brief.free("free choice"));
    return examples.stream()
        .map(example -> Agreement.of(plan, example.passage()))
        .collect(ImmutableList.toImmutableList());
  }
}
