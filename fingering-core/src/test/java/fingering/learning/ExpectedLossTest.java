package fingering.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.LeftHand;
import fingering.music.Music;
import fingering.scoring.Scoring;
import fingering.scoring.Weights;
import fingering.scoring.rules.StandardRules;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ExpectedLossTest {
  private static final Scoring SCORING = StandardRules.commonPractice();
  private static final double STEP = 1e-5;

  private static ExpectedLoss loss(TrainingExample... players) {
    double[] start =
        StandardRules.all().stream()
            .mapToDouble(rule -> Weights.commonPractice().of(rule) / 60.0)
            .toArray();
    start[3] = 0;
    MeasuredVersion lesson = MeasuredVersion.of(List.of(players), SCORING, LeftHand.MEDIUM);
    return new ExpectedLoss(
        ImmutableList.of(new TrainingPiece(ImmutableList.of(lesson))), start, 10);
  }

  private static double[] perturbed(double[] point, Random random) {
    return Arrays.stream(point).map(x -> x + random.nextGaussian() / 2).toArray();
  }

  private static void assertGradientMatchesFiniteDifferences(ExpectedLoss loss) {
    double[] point = perturbed(loss.startPoint(), new Random(5));
    double[] gradient = new double[point.length];
    loss.at(point, gradient);
    for (int r = 0; r < point.length; r++) {
      double[] above = point.clone();
      double[] below = point.clone();
      above[r] += STEP;
      below[r] -= STEP;
      double slope =
          (loss.at(above, new double[point.length]) - loss.at(below, new double[point.length]))
              / (2 * STEP);
      assertThat(gradient[r])
          .as(StandardRules.all().get(r).id())
          .isCloseTo(slope, within(1e-4 * (1 + Math.abs(slope))));
    }
  }

  @Test
  void theGradientMatchesFiniteDifferences() {
    TrainingExample fast = Marked.by(SCORING, "one", Marked.violin(3, 30));
    assertGradientMatchesFiniteDifferences(loss(fast));
  }

  @Test
  void theGradientForSparseMarksOfTwoPlayersMatchesFiniteDifferences() {
    TrainingExample one =
        new TrainingExample("one", Music.violin().notes("A4/1@0 B4/1 C5/1@2 D5/1 E5/1@4 A5/1"));
    TrainingExample two =
        new TrainingExample("two", Music.violin().notes("A4/1@4$3 B4/1 C5/1@2 D5/1$2 E5/1 A5/1"));
    assertGradientMatchesFiniteDifferences(loss(one, two));
  }
}
