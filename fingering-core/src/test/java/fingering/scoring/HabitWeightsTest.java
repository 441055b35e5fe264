package fingering.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.google.common.primitives.ImmutableDoubleArray;
import fingering.scoring.rules.StandardRules;
import fingering.tables.FingeringException;
import fingering.tables.Instrument.HandKind;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Habit networks in weights files. */
class HabitWeightsTest {
  private static String network(int numbers) {
    return IntStream.range(0, numbers)
        .mapToObj(i -> i % 2 == 0 ? "-0.25" : "12")
        .collect(Collectors.joining(", ", "cello.habit-network: [", "]"));
  }

  @Test
  void aHabitNetworkIsReadForItsHand() {
    Weights weights =
        Weights.parse("w", "habit: 1\n" + network(HabitNetwork.SIZE), StandardRules.all());
    assertThat(weights.habit().networks()).containsOnlyKeys(HandKind.CELLO);
    assertThat(weights.habit().networks().get(HandKind.CELLO).subArray(0, 2))
        .isEqualTo(ImmutableDoubleArray.of(-0.25, 12));
    assertThat(Scoring.of(StandardRules.all(), weights.orElse(Weights.commonPractice())).rules())
        .hasSize(StandardRules.all().size() + 1)
        .contains(weights.habit());
  }

  @Test
  void aHabitWithoutPointsCostsOnePerUnit() {
    Weights weights = Weights.parse("w", "cello.habit: 3\n" + network(HabitNetwork.SIZE));
    assertThat(weights.of(weights.habit(), HandKind.CELLO)).isEqualTo(3);
    assertThat(weights.of(weights.habit(), HandKind.VIOLIN)).isEqualTo(1);
  }

  @Test
  void theHabitOfOtherWeightsIsTakenIfThereIsNone() {
    Weights others = Weights.parse("p", "habit: 3\n" + network(HabitNetwork.SIZE));
    Weights all = Weights.parse("w", "shift: 1").orElse(others);
    assertThat(all.habit()).isEqualTo(others.habit());
    assertThat(all.points()).containsEntry("habit", 3L);
    Weights off = Weights.parse("w", "habit: 0").orElse(others);
    assertThat(off.points()).containsEntry("habit", 0L);
  }

  @Test
  void aNetworkWithAnotherCountOfNumbersIsRefused() {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> Weights.parse("my.yaml", "shift: 1\n" + network(7)))
        .withMessage(
            "my.yaml, line 2: 'cello.habit-network' has 7 numbers; a network has %d"
                .formatted(HabitNetwork.SIZE));
  }

  @ParameterizedTest
  @ValueSource(strings = {"many", "NaN", "Infinity", "1e999"})
  void aNetworkOfSomethingElseIsRefused(String number) {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> Weights.parse("my.yaml", "cello.habit-network: [1, " + number + "]"))
        .withMessageStartingWith("my.yaml, line 1: ")
        .withMessageContaining("'" + number + "' is not a number, such as -0.25");
  }

  @Test
  void aNetworkOfAnUnknownHandIsNotIgnored() {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> Weights.parse("my.yaml", "flute.habit-network: [1]"))
        .withMessageStartingWith("my.yaml, line 1: 'flute.habit-network' has a single value");
  }

  @ParameterizedTest
  @ValueSource(strings = {"flute.shift: 1", "cello.shft: 1", "flute.habit-network: [1]"})
  void anUnknownHandOrRuleIsRefused(String line) {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> Weights.parse("my.yaml", line, StandardRules.all()))
        .withMessageStartingWith(
            "my.yaml, line 1: there is no key '" + line.substring(0, line.indexOf(':')) + "'");
  }
}
