package fingering.playability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CheckLevelTest {

  @ParameterizedTest
  @ValueSource(strings = {"advanced", "common-practice", "intermediate", "beginner"})
  void everyValueHasASourceAndTheWrittenFileReadsBack(String name) {
    CheckLevel level = CheckLevel.preset(name);
    assertThat(Threshold.values())
        .allSatisfy(threshold -> assertThat(level.source(threshold)).isNotBlank());
    assertThat(CheckLevel.parse(name, level.file())).isEqualTo(level);
    assertThat(CheckLevel.parse(name, CheckLevel.text(name))).isEqualTo(level);
    assertThat(level.playerSpeed().name()).isEqualTo(name);
  }

  @Test
  void lowerLevelsHaveLowerPositionsAndNeedMoreTime() {
    for (int i = 1; i < CheckLevel.presets().size(); i++) {
      CheckLevel upper = CheckLevel.preset(CheckLevel.presets().get(i - 1));
      CheckLevel lower = CheckLevel.preset(CheckLevel.presets().get(i));
      for (Instrument instrument : Instruments.standard().all()) {
        assertThat(lower.highest(instrument)).isLessThanOrEqualTo(upper.highest(instrument));
        assertThat(upper.clefs(instrument)).containsAll(lower.clefs(instrument));
      }
      for (Threshold threshold : Threshold.values()) {
        if (threshold.form() == Threshold.Form.SECONDS) {
          double less = upper.seconds(threshold);
          assertThat(
                  threshold.key().startsWith("bow-")
                      ? -lower.seconds(threshold)
                      : lower.seconds(threshold))
              .as(threshold.key())
              .isGreaterThanOrEqualTo(threshold.key().startsWith("bow-") ? -less : less);
        }
      }
    }
  }

  @Test
  void malformedFilesAreRefusedWithLineAndReason() {
    String text = CheckLevel.text("intermediate");
    refused(text.replace("mute-on ", "mute-in "), "own.level, line 38: there is no 'mute-in'");
    refused(
        text.replace(
            "= 4 s                  # common practice, no source\nmute-off",
            "= soon # mine\nmute-off"),
        "'soon' is not seconds such as 1.5 s");
    refused(text + "mute-on = 3 s # mine\n", "'mute-on' stands twice");
    refused(text + "what\n", "write a key, a value and its source");
    refused("plan = intermediate # mine\n", "own.level says nothing of 'tempo', 'haste'");
    refused(text.replaceAll("(?m)^haste .*$", "haste = 90 %"), "say where 'haste' is from");
    assertThatThrownBy(() -> CheckLevel.preset("virtuoso"))
        .hasMessage(
            "there is no level 'virtuoso'; choose one of advanced, common-practice, intermediate, beginner");
  }

  private static void refused(String text, String says) {
    assertThatThrownBy(() -> CheckLevel.parse("own.level", text))
        .isInstanceOf(FingeringException.class)
        .hasMessageContaining(says);
  }
}
