package fingering.learning;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.LeftHand;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.Planner;
import fingering.scoring.CostRule;
import fingering.scoring.Scoring;
import java.util.List;

/** One music, measured once, with all the fingerings that players gave it. */
final class Lesson {
  private final ImmutableList<Example> examples;
  private final Planner planner;
  private final Lattice lattice;
  private final int[][] everything;
  private final ImmutableList<int[][]> agreeing;

  private Lesson(
      ImmutableList<Example> examples,
      Planner planner,
      Lattice lattice,
      ImmutableList<int[][]> agreeing) {
    this.examples = examples;
    this.planner = planner;
    this.lattice = lattice;
    this.agreeing = agreeing;
    everything = ForwardBackward.everything(lattice);
  }

  /**
   * Measures the music of some examples that differ in nothing but printed fingers and strings.
   *
   * @throws fingering.plan.InfeasibleBriefException if a note lies out of the instrument's range
   */
  static Lesson of(List<Example> examples, Scoring scoring, LeftHand hand) {
    Planner planner = Planner.of(examples.get(0).passage(), scoring, hand);
    ImmutableList<CostRule> rules = scoring.rules();
    return new Lesson(
        ImmutableList.copyOf(examples),
        planner,
        Lattice.of(examples.get(0).passage().moments(), planner.grips(), rules),
        examples.stream()
            .map(example -> example.agreeing(planner.grips()))
            .collect(ImmutableList.toImmutableList()));
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

  /**
   * How unlikely what the players printed is, added up: the negative logarithms of its probability.
   *
   * @param weights of the rules, in natural units
   * @param gradient is added the gradient by the logarithm of each weight
   */
  double surprise(double[] weights, double[] gradient) {
    AmountTable table = lattice.table();
    double[] factors = table.factors(weights);
    double[] met = new double[table.size()];
    double surprise =
        players() * ForwardBackward.sum(lattice, factors, everything, -players(), met);
    for (int[][] marked : agreeing) {
      surprise -= ForwardBackward.sum(lattice, factors, marked, 1, met);
    }
    table.addGradient(met, weights, gradient);
    return surprise;
  }

  /** The agreement of the free plan with each player. */
  ImmutableList<Agreement> agreements(Scoring scoring) {
    Plan plan = planner.scoredBy(scoring).plan(Brief.free("free choice"));
    return examples.stream()
        .map(example -> Agreement.of(plan, example.passage()))
        .collect(ImmutableList.toImmutableList());
  }
}
