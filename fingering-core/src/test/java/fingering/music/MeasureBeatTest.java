package fingering.music;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import fingering.tables.FingeringException;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MeasureBeatTest {
  private static final Passage PASSAGE =
      Music.viola().notes("C4/1 D4/0.5 E4/0.5 F4/1:3 G4/1:3 A4/1:3 r/1 C4/4 D4+F4/0.25 E4/0.25");

  @ParameterizedTest
  @CsvSource({
    "1.1, 0",
    "1.2, 1",
    "1.2.5, 2",
    "1.2.50, 2",
    "1.3, 3",
    "1.3.3, 4",
    "1.3.33, 4",
    "1.3.7, 5",
    "2.1, 6",
    "3.1, 7",
    "3.1.25, 8"
  })
  void measureAndBeatFindTheNoteThatBeginsThere(String written, int moment) {
    assertThat(MeasureBeat.parse(written).indexIn(PASSAGE)).isEqualTo(moment);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1.4 | measure 1, beat 3.67",
        "1.2.2 | measure 1, beat 2",
        "2.3 | measure 2, beat 1",
        "9.1 | measure 3, beat 1",
        "X1.1 | measure 1, beat 1"
      })
  void aTimeWithoutANoteIsRefusedWithTheNearest(String written, String nearest) {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> MeasureBeat.parse(written).indexIn(PASSAGE))
        .withMessageStartingWith("No note begins in measure ")
        .withMessageEndingWith("; the nearest note begins in " + nearest + ".");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "17", "17.", ".2", "17.x", "17,2", "17.2.", "17.2.3.4", "17 2"})
  void textThatIsNotAMeasureAndBeatIsRefusedWithAnExample(String written) {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> MeasureBeat.parse(written))
        .withMessageContaining("'" + written + "'")
        .withMessageContaining("17.2");
  }

  @ParameterizedTest
  @CsvSource({"1.2.5, 1.2.50", "1.10, 1.10.0", "1.2, 1.2.000"})
  void trailingZerosOfABeatDoNotCount(String one, String other) {
    assertThat(MeasureBeat.parse(other)).isEqualTo(MeasureBeat.parse(one)).hasToString(one);
  }

  @Test
  void aBeatBelowZeroIsRefused() {
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> new MeasureBeat("1", BigDecimal.valueOf(-1)));
  }

  @Test
  void aMeasureNumberMayContainLetters() {
    assertThat(MeasureBeat.parse("X1.2").measure()).isEqualTo("X1");
  }

  @ParameterizedTest
  @ValueSource(strings = {"17.2", "17.2.5", "X1.1.333"})
  void measureAndBeatAreReadBack(String written) {
    assertThat(MeasureBeat.parse(written)).hasToString(written);
    assertThat(MeasureBeat.parse(MeasureBeat.parse(written).toString()))
        .isEqualTo(MeasureBeat.parse(written));
  }
}
