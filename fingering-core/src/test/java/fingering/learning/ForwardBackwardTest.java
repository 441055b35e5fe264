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
import fingering.tables.Instrument.HandKind;
import java.util.ArrayList;
import java.util.Arrays;
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
  private static final Scoring SCORING =
      Scoring.of(RULES, new Weights(Weights.commonPractice().points()));

  /** Expectations by a walk over all paths: of losses, of amounts, and of their products. */
  private static final class Walk {
    private final Passage passage;
    private final ImmutableList<ImmutableList<Grip>> grips;
    private final double[][] losses;
    private final double[][] own;
    private final double[][] taken;
    private final double[][] takenTogether;
    private final double[] amounts = new double[RULES.size()];
    private final double[] together = new double[RULES.size()];
    private double sum;
    private double loss;

    Walk(
        Passage passage,
        ImmutableList<ImmutableList<Grip>> grips,
        double[][] losses,
        double[][] own) {
      this.passage = passage;
      this.grips = grips;
      this.losses = losses;
      this.own = own;
      taken = Arrays.stream(own).map(some -> new double[some.length]).toArray(double[][]::new);
      takenTogether =
          Arrays.stream(own).map(some -> new double[some.length]).toArray(double[][]::new);
      walk(ImmutableList.of(), 0, 1);
    }

    private void walk(ImmutableList<Grip> path, double lost, double factor) {
      int m = path.size();
      if (m < grips.size()) {
        for (int j = 0; j < grips.get(m).size(); j++) {
          Grip grip = grips.get(m).get(j);
          walk(
              ImmutableList.<Grip>builder().addAll(path).add(grip).build(),
              lost + losses[m][j],
              factor * own[m][j]);
        }
        return;
      }
      ImmutableList<Charge> charges = SCORING.explain(passage.moments(), grips, path);
      long cost = charges.stream().mapToLong(Charge::cost).sum();
      double weight = factor * Math.exp(-cost / NATURAL);
      sum += weight;
      loss += weight * lost;
      take(path, weight, lost);
      for (Charge charge : charges) {
        for (int r = 0; r < amounts.length; r++) {
          double amount = RULES.get(r).id().equals(charge.rule()) ? charge.amount() * weight : 0;
          amounts[r] += amount;
          together[r] += amount * lost;
        }
      }
    }

    private void take(ImmutableList<Grip> path, double weight, double lost) {
      for (int i = 0; i < path.size(); i++) {
        int j = grips.get(i).indexOf(path.get(i));
        taken[i][j] += weight;
        takenTogether[i][j] += weight * lost;
      }
    }

    double logSum() {
      return Math.log(sum);
    }

    /** The expected amount of a rule. */
    double amount(int rule) {
      return amounts[rule] / sum;
    }

    /** The probability of a grip. */
    double probability(int m, int j) {
      return taken[m][j] / sum;
    }

    /** The covariance of the loss and the use of a grip. */
    double covariance(int m, int j) {
      return takenTogether[m][j] / sum - probability(m, j) * expected();
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
        .mapToDouble(rule -> Weights.commonPractice().of(rule, HandKind.VIOLIN) / NATURAL)
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
    double[][] own = own(grips, seed);
    Slopes slopes = new Slopes(lattice.table().size(), losses);
    double expected =
        ForwardBackward.expected(lattice, lattice.table().factors(natural()), own, losses, slopes);
    double[] covariances = new double[RULES.size()];
    lattice.table().addGradient(slopes.byBundle(), natural(), covariances);

    Walk walk = new Walk(passage, grips, losses, own);
    for (int m = 0; m < own.length; m++) {
      for (int j = 0; j < own[m].length; j++) {
        assertThat(slopes.byScore()[m][j]).isCloseTo(-walk.covariance(m, j), within(1e-9));
      }
    }
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

  /** Factors of grips, as of a habit. */
  private static double[][] own(ImmutableList<ImmutableList<Grip>> grips, int seed) {
    Random random = new Random(seed + 1);
    return grips.stream()
        .map(some -> some.stream().mapToDouble(grip -> 0.05 + random.nextDouble()).toArray())
        .toArray(double[][]::new);
  }

  @Property(tries = 30)
  void theLogarithmOfTheSumAndItsSlopesMatchTheSumOverAllPaths(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 5) int notes) {
    Passage passage = Marked.violin(seed, notes);
    ImmutableList<ImmutableList<Grip>> grips = thinned(passage, seed);
    double[][] own = own(grips, seed);
    Lattice lattice = Lattice.of(passage.moments(), grips, RULES);
    Slopes slopes = new Slopes(lattice.table().size(), own);
    double logSum =
        ForwardBackward.logSum(lattice, lattice.table().factors(natural()), own, slopes);
    double[] amounts = new double[RULES.size()];
    lattice.table().addGradient(slopes.byBundle(), natural(), amounts);

    Walk walk = new Walk(passage, grips, losses(grips, seed), own);
    assertThat(logSum).isCloseTo(walk.logSum(), within(1e-9));
    for (int r = 0; r < amounts.length; r++) {
      assertThat(amounts[r])
          .as(RULES.get(r).id())
          .isCloseTo(walk.amount(r) * natural()[r], within(1e-6));
    }
    for (int m = 0; m < own.length; m++) {
      double all = 0;
      for (int j = 0; j < own[m].length; j++) {
        assertThat(slopes.byScore()[m][j]).isCloseTo(-walk.probability(m, j), within(1e-9));
        all -= slopes.byScore()[m][j];
      }
      assertThat(all).isCloseTo(1, within(1e-9));
    }
  }

  @Test
  void whatIsAddedCountsByItsFactor() {
    Slopes slopes = new Slopes(2, new double[][] {{0, 0}});
    slopes.addNow(-0.5);
    slopes.addNode(0, 1, 1, 4);
    slopes.addEdge(0, 6);
    assertThat(slopes.byBundle()).containsExactly(-3, -2);
    assertThat(slopes.byScore()[0]).containsExactly(0, 2);
  }

  @Test
  void veryExpensivePathsStillHaveAProbability() {
    Passage passage = Music.violin().notes("G3/0.25 E6/0.25 G3/0.25 E6/0.25 A3/0.25 E6/0.25");
    ImmutableList<ImmutableList<Grip>> grips = Planner.of(passage, SCORING).grips();
    Lattice lattice = Lattice.of(passage.moments(), grips, RULES);
    double[] expensive = RULES.stream().mapToDouble(rule -> 1e4).toArray();
    double[][] losses = losses(grips, 1);
    double[][] unlike =
        Arrays.stream(own(grips, 1))
            .map(some -> Arrays.stream(some).map(x -> x < 1 ? 1e-30 * Math.exp(-50) : 1).toArray())
            .toArray(double[][]::new);
    double[] factors = lattice.table().factors(expensive);
    Slopes slopes = new Slopes(lattice.table().size(), losses);
    double expected = ForwardBackward.expected(lattice, factors, unlike, losses, slopes);
    assertThat(expected).isBetween(0.0, 6.0);
    assertThat(ForwardBackward.logSum(lattice, factors, unlike, slopes)).isFinite();
    assertThat(slopes.byBundle()).doesNotContain(Double.NaN);
    for (double[] some : slopes.byScore()) {
      assertThat(some).doesNotContain(Double.NaN);
    }
  }
}
