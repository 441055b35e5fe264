package fingering.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.LeftHand;
import fingering.music.Music;
import fingering.scoring.Scoring;
import fingering.scoring.Weights;
import fingering.scoring.rules.StandardRules;
import fingering.tables.Instrument.HandKind;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ExpectedLossTest {
  private static final Scoring SCORING =
      Scoring.of(StandardRules.all(), new Weights(Weights.commonPractice().points()));

  /** Of the numbers of a network, every so many is checked. */
  private static final int CHECKED = 17;

  private static final double STEP = 1e-5;

  private static final LearningMethod RULES = LearningMethod.rules(10);
  private static final LearningMethod LIKELIHOOD =
      new LearningMethod(10, false, 0, 0.4, ImmutableList.of(1.0));
  private static final LearningMethod LIKELIHOOD_ONLY =
      new LearningMethod(10, false, 0, 1, ImmutableList.of(1.0));
  private static final LearningMethod HABIT =
      new LearningMethod(10, true, 5, 0.3, ImmutableList.of(1.0, 2.0));

  private static ExpectedLoss loss(LearningMethod method, TrainingExample... players) {
    double[] start =
        StandardRules.all().stream()
            .mapToDouble(rule -> Weights.commonPractice().of(rule, HandKind.VIOLIN) / 60.0)
            .toArray();
    start[3] = 0;
    TrainingPiece piece =
        TrainingPiece.of(List.of(List.of(players)), SCORING, LeftHand.MEDIUM, method.tempi());
    return new ExpectedLoss(ImmutableList.of(piece), start, method);
  }

  private static double[] perturbed(double[] point, Random random) {
    return Arrays.stream(point).map(x -> x + random.nextGaussian() / 2).toArray();
  }

  private static void assertGradientMatchesFiniteDifferences(ExpectedLoss loss) {
    double[] point = perturbed(loss.startPoint(), new Random(5));
    double[] gradient = new double[point.length];
    loss.at(point, gradient);
    int rules = StandardRules.all().size();
    for (int r = 0; r < point.length; r += r < rules - 1 ? 1 : CHECKED) {
      double[] above = point.clone();
      double[] below = point.clone();
      above[r] += STEP;
      below[r] -= STEP;
      double slope =
          (loss.at(above, new double[point.length]) - loss.at(below, new double[point.length]))
              / (2 * STEP);
      assertThat(gradient[r])
          .as(r < rules ? StandardRules.all().get(r).id() : "number " + (r - rules))
          .isCloseTo(slope, within(1e-4 * (1 + Math.abs(slope))));
    }
  }

  @Test
  void theGradientMatchesFiniteDifferences() {
    TrainingExample fast = Marked.by(SCORING, "one", Marked.violin(3, 30));
    for (LearningMethod method : List.of(RULES, LIKELIHOOD, LIKELIHOOD_ONLY, HABIT)) {
      assertGradientMatchesFiniteDifferences(loss(method, fast));
    }
  }

  @Test
  void theGradientForSparseMarksOfTwoPlayersMatchesFiniteDifferences() {
    TrainingExample one =
        new TrainingExample("one", Music.violin().notes("A4/1@0 B4/1 C5/1@2 D5/1 E5/1@4 A5/1"));
    TrainingExample two =
        new TrainingExample("two", Music.violin().notes("A4/1@4$3 B4/1 C5/1@2 D5/1$2 E5/1 A5/1"));
    for (LearningMethod method : List.of(RULES, LIKELIHOOD, LIKELIHOOD_ONLY, HABIT)) {
      assertGradientMatchesFiniteDifferences(loss(method, one, two));
    }
  }
}
