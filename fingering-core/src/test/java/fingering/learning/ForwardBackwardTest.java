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
import fingering.scoring.Rules;
import fingering.scoring.Scoring;
import fingering.scoring.Weights;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Sums over all paths against a walk over every path, priced by the scoring itself. */
class ForwardBackwardTest {
  private static final int MOST_GRIPS = 5;
  private static final double NATURAL = 60;
  private static final ImmutableList<CostRule> RULES = Rules.all();
  private static final Scoring SCORING = Scoring.commonPractice();

  /** Sums over paths one by one: of probabilities, and of amounts times probabilities. */
  private static final class Walk {
    private final Passage passage;
    private final List<ImmutableList<Grip>> grips;
    private final double[] amounts = new double[RULES.size()];
    private double sum;

    Walk(Passage passage, List<ImmutableList<Grip>> grips) {
      this.passage = passage;
      this.grips = grips;
      walk(ImmutableList.of());
      for (int r = 0; r < amounts.length; r++) {
        amounts[r] /= sum;
      }
    }

    private void walk(ImmutableList<Grip> path) {
      if (path.size() < grips.size()) {
        for (Grip grip : grips.get(path.size())) {
          walk(ImmutableList.<Grip>builder().addAll(path).add(grip).build());
        }
        return;
      }
      ImmutableList<Charge> charges = SCORING.explain(passage.moments(), path);
      long cost = charges.stream().mapToLong(Charge::cost).sum();
      double weight = Math.exp(-cost / NATURAL);
      sum += weight;
      for (Charge charge : charges) {
        for (int r = 0; r < amounts.length; r++) {
          amounts[r] += RULES.get(r).id().equals(charge.rule()) ? charge.amount() * weight : 0;
        }
      }
    }
  }

  private static ImmutableList<ImmutableList<Grip>> thinned(Passage passage, int seed) {
    return Planner.of(passage, SCORING).grips().stream()
        .map(
            grips -> {
              List<Grip> some = new ArrayList<>(grips);
              java.util.Collections.shuffle(some, new java.util.Random(seed));
              return ImmutableList.copyOf(some.subList(0, Math.min(MOST_GRIPS, some.size())));
            })
        .collect(ImmutableList.toImmutableList());
  }

  private static double[] natural() {
    return RULES.stream()
        .mapToDouble(rule -> Weights.commonPractice().of(rule) / NATURAL)
        .toArray();
  }

  private static void assertSums(
      Passage passage, Lattice lattice, List<ImmutableList<Grip>> open, int[][] indices) {
    double[] met = new double[lattice.table().size()];
    double logarithm =
        ForwardBackward.sum(lattice, lattice.table().factors(natural()), indices, 1, met);
    double[] amounts = new double[RULES.size()];
    lattice.table().addGradient(met, natural(), amounts);

    Walk walk = new Walk(passage, open);
    assertThat(logarithm).isCloseTo(Math.log(walk.sum), within(1e-9));
    for (int r = 0; r < amounts.length; r++) {
      if (natural()[r] == 0) {
        continue; // a rule that weighs nothing has no gradient by the logarithm of its weight
      }
      assertThat(amounts[r] / natural()[r])
          .as(RULES.get(r).id())
          .isCloseTo(walk.amounts[r], within(1e-6));
    }
  }

  @Property(tries = 30)
  void likelihoodAndExpectedAmountsAreThoseOfAllPathsOneByOne(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 5) int notes) {
    Passage passage = Marked.violin(seed, notes);
    ImmutableList<ImmutableList<Grip>> grips = thinned(passage, seed);
    Lattice lattice = Lattice.of(passage.moments(), grips, RULES);
    assertSums(passage, lattice, grips, ForwardBackward.everything(lattice));
  }

  @Property(tries = 30)
  void markedNotesLeaveOnlyThePathsThatAgree(
      @ForAll int seed, @ForAll @IntRange(min = 2, max = 5) int notes) {
    Passage passage = Marked.violin(seed, notes);
    ImmutableList<ImmutableList<Grip>> grips = thinned(passage, seed);
    Lattice lattice = Lattice.of(passage.moments(), grips, RULES);
    int[][] indices = ForwardBackward.everything(lattice);
    List<ImmutableList<Grip>> open = new ArrayList<>(grips);
    int closed = Math.floorMod(seed, notes);
    indices[closed] = new int[] {grips.get(closed).size() - 1};
    open.set(closed, ImmutableList.of(grips.get(closed).get(indices[closed][0])));
    assertSums(passage, lattice, open, indices);
  }

  @Test
  void veryDearPathsStillHaveAProbability() {
    Passage passage = Music.violin().notes("G3/0.25 E6/0.25 G3/0.25 E6/0.25 A3/0.25 E6/0.25");
    Lattice lattice = Lattice.of(passage.moments(), Planner.of(passage, SCORING).grips(), RULES);
    double[] dear = RULES.stream().mapToDouble(rule -> 1e4).toArray();
    double[] met = new double[lattice.table().size()];
    double logarithm =
        ForwardBackward.sum(
            lattice, lattice.table().factors(dear), ForwardBackward.everything(lattice), 1, met);
    assertThat(logarithm).isFinite().isNegative();
    assertThat(met).doesNotContain(Double.NaN);
  }
}
