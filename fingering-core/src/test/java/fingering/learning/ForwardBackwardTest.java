package fingering.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.plan.Planner;
import fingering.scoring.Charge;
import fingering.scoring.CostRule;
import fingering.scoring.Scoring;
import fingering.scoring.Weights;
import fingering.scoring.rules.StandardRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Compares expectations with a sum over every path, whose cost is that of the scoring. */
class ForwardBackwardTest {
  private static final int MOST_GRIPS = 5;
  private static final double NATURAL = 60;
  private static final ImmutableList<CostRule> RULES = StandardRules.all();
  private static final Scoring SCORING = StandardRules.commonPractice();

  /** Expectations by a walk over all paths: of losses, of amounts, and of their products. */
  private static final class Walk {
    private final Passage passage;
    private final List<ImmutableList<Grip>> grips;
    private final double[][] losses;
    private final double[] amounts = new double[RULES.size()];
    private final double[] together = new double[RULES.size()];
    private double sum;
    private double loss;

    Walk(Passage passage, List<ImmutableList<Grip>> grips, double[][] losses) {
      this.passage = passage;
      this.grips = grips;
      this.losses = losses;
      walk(ImmutableList.of(), 0);
    }

    private void walk(ImmutableList<Grip> path, double lost) {
      int m = path.size();
      if (m < grips.size()) {
        for (int j = 0; j < grips.get(m).size(); j++) {
          Grip grip = grips.get(m).get(j);
          walk(ImmutableList.<Grip>builder().addAll(path).add(grip).build(), lost + losses[m][j]);
        }
        return;
      }
      ImmutableList<Charge> charges = SCORING.explain(passage.moments(), path);
      long cost = charges.stream().mapToLong(Charge::cost).sum();
      double weight = Math.exp(-cost / NATURAL);
      sum += weight;
      loss += weight * lost;
      for (Charge charge : charges) {
        for (int r = 0; r < amounts.length; r++) {
          double amount = RULES.get(r).id().equals(charge.rule()) ? charge.amount() * weight : 0;
          amounts[r] += amount;
          together[r] += amount * lost;
        }
      }
    }

    double expected() {
      return loss / sum;
    }

    double covariance(int rule) {
      return together[rule] / sum - amounts[rule] / sum * expected();
    }
  }

  private static ImmutableList<ImmutableList<Grip>> thinned(Passage passage, int seed) {
    return Planner.of(passage, SCORING).grips().stream()
        .map(
            grips -> {
              List<Grip> some = new ArrayList<>(grips);
              java.util.Collections.shuffle(some, new Random(seed));
              return ImmutableList.copyOf(some.subList(0, Math.min(MOST_GRIPS, some.size())));
            })
        .collect(ImmutableList.toImmutableList());
  }

  private static double[] natural() {
    return RULES.stream()
        .mapToDouble(rule -> Weights.commonPractice().of(rule) / NATURAL)
        .toArray();
  }

  private static double[][] losses(ImmutableList<ImmutableList<Grip>> grips, int seed) {
    Random random = new Random(seed);
    return grips.stream()
        .map(some -> some.stream().mapToDouble(grip -> random.nextInt(3) / 2.0).toArray())
        .toArray(double[][]::new);
  }

  @Property(tries = 30)
  void lossAndSlopesMatchTheSumOverAllPaths(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 5) int notes) {
    Passage passage = Marked.violin(seed, notes);
    ImmutableList<ImmutableList<Grip>> grips = thinned(passage, seed);
    double[][] losses = losses(grips, seed);
    Lattice lattice = Lattice.of(passage.moments(), grips, RULES);
    double[] slopes = new double[lattice.table().size()];
    double expected =
        ForwardBackward.expected(lattice, lattice.table().factors(natural()), losses, slopes);
    double[] covariances = new double[RULES.size()];
    lattice.table().addGradient(slopes, natural(), covariances);

    Walk walk = new Walk(passage, grips, losses);
    assertThat(expected).isCloseTo(walk.expected(), within(1e-9));
    for (int r = 0; r < covariances.length; r++) {
      if (natural()[r] == 0) {
        continue; // a rule that weighs nothing has no gradient by the logarithm of its weight
      }
      assertThat(covariances[r] / natural()[r])
          .as(RULES.get(r).id())
          .isCloseTo(walk.covariance(r), within(1e-6));
    }
  }

  @Test
  void veryExpensivePathsStillHaveAProbability() {
    Passage passage = Music.violin().notes("G3/0.25 E6/0.25 G3/0.25 E6/0.25 A3/0.25 E6/0.25");
    ImmutableList<ImmutableList<Grip>> grips = Planner.of(passage, SCORING).grips();
    Lattice lattice = Lattice.of(passage.moments(), grips, RULES);
    double[] expensive = RULES.stream().mapToDouble(rule -> 1e4).toArray();
    double[] slopes = new double[lattice.table().size()];
    double expected =
        ForwardBackward.expected(
            lattice, lattice.table().factors(expensive), losses(grips, 1), slopes);
    assertThat(expected).isBetween(0.0, 6.0);
    assertThat(slopes).doesNotContain(Double.NaN);
  }
}
