package fingering.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableIntArray;
import fingering.fingerboard.Fingerboard;
import fingering.fingerboard.Grip;
import fingering.fingerboard.GripFinder;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.tables.Pitch;
import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class HabitNetworkTest {
  private static final double STEP = 1e-6;

  private static double[] random(long seed) {
    return new Random(seed).doubles(HabitNetwork.SIZE, -1, 1).toArray();
  }

  private static ImmutableList<Grip> grips(Passage passage, int moment) {
    return new GripFinder(Fingerboard.of(passage.instrument()))
        .grips(passage.moments().get(moment));
  }

  private static LineContext line(Passage passage, int moment) {
    return LineContext.of(passage.moments().get(moment));
  }

  private static double score(double[] numbers, ImmutableIntArray line, ImmutableIntArray place) {
    return HabitNetwork.score(numbers, HabitNetwork.sums(numbers, line), place);
  }

  @Test
  void theGradientMatchesFiniteDifferences() {
    double[] numbers = random(1);
    Passage passage = Music.cello().notes("C3/1 ~E3/0.5 D3/0.5 r/1 A3/1");
    for (int m = 0; m < 4; m++) {
      ImmutableIntArray line = HabitNetwork.inputs(line(passage, m));
      ImmutableIntArray place = HabitNetwork.inputs(grips(passage, m).get(m).top());
      double[] gradient = new double[HabitNetwork.SIZE + 3];
      HabitNetwork.addGradient(
          numbers, line, HabitNetwork.sums(numbers, line), place, 2.5, gradient, 3);
      assertThat(gradient).startsWith(0, 0, 0);
      for (int i = 0; i < numbers.length; i++) {
        double[] above = numbers.clone();
        double[] below = numbers.clone();
        above[i] += STEP;
        below[i] -= STEP;
        double slope = (score(above, line, place) - score(below, line, place)) / (2 * STEP);
        assertThat(gradient[i + 3]).as("number " + i).isCloseTo(2.5 * slope, within(1e-7));
      }
    }
  }

  @Test
  void aScaledNetworkMultipliesAllScores() {
    double[] numbers = random(2);
    double[] scaled = numbers.clone();
    HabitNetwork.scale(scaled, 60);
    Passage passage = Music.violin().notes("A4/1 B4/1 C5/1");
    double[] scores = HabitNetwork.scores(numbers, line(passage, 1), grips(passage, 1));
    double[] scaledScores = HabitNetwork.scores(scaled, line(passage, 1), grips(passage, 1));
    for (int j = 0; j < scores.length; j++) {
      assertThat(scaledScores[j]).isCloseTo(60 * scores[j], within(1e-9));
    }
  }

  @Test
  void theNumbersBeforeTrainingAreTheSameEveryTime() {
    assertThat(HabitNetwork.start()).isEqualTo(HabitNetwork.start()).hasSize(HabitNetwork.SIZE);
  }

  @Test
  void everyPlacementOfEveryInstrumentHasInputs() {
    double[] numbers = random(3);
    for (String instrument : ImmutableList.of("violin", "viola", "cello", "bass")) {
      int placements = 0;
      for (int letter = Pitch.parse("C1").letterNumber();
          letter <= Pitch.parse("C7").letterNumber();
          letter++) {
        Passage passage = Music.on(instrument).notes(Pitch.natural(letter) + "/1");
        for (Grip grip : grips(passage, 0)) {
          ImmutableIntArray inputs = HabitNetwork.inputs(grip.top());
          assertThat(inputs.stream().distinct()).hasSize(grip.open() ? 4 : 5);
          assertThat(score(numbers, HabitNetwork.inputs(line(passage, 0)), inputs)).isFinite();
          placements++;
        }
      }
      assertThat(placements).as(instrument).isGreaterThan(200);
    }
  }

  private static Passage atSixty(String events) {
    return Music.violin().tempo("quarter=60").notes(events);
  }

  @Test
  void differentLinesHaveDifferentInputs() {
    Set<ImmutableIntArray> inputs = new HashSet<>();
    for (String events :
        ImmutableList.of(
            "C5/1 D5/1 E5/1",
            "C5/0.2 D5/0.2 E5/0.2",
            "C5/0.1 D5/0.1 E5/0.1",
            "C5/1 D5/0.3 E5/2",
            "C5/1 ~D5/1 E5/1",
            "C5/1 D5/1 ~E5/1",
            "C5/0.5 D5/1 E5/1",
            "C5/1 D5/1 Eb5/1",
            "E5/1 D5/1 E5/1",
            "C5/1 D5/1 D5/1",
            "C5/1 D5/1")) {
      assertThat(inputs.add(HabitNetwork.inputs(line(atSixty(events), 1)))).as(events).isTrue();
    }
  }
}
