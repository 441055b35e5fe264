package fingering.playability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CheckLevelTest {

  @ParameterizedTest
  @ValueSource(strings = {"advanced", "common-practice", "intermediate", "beginner"})
  void theFileToCopyIsReadBackAndExplainsEveryValue(String name) {
    CheckLevel level = CheckLevel.preset(name);
    String text = CheckLevel.text(name);
    assertThat(CheckLevel.parse(name, text)).isEqualTo(level);
    assertThat(Threshold.values())
        .allSatisfy(
            threshold ->
                assertThat(text)
                    .containsPattern(
                        "(?m)^%s: .* # %s$"
                            .formatted(threshold.key(), Pattern.quote(threshold.explanation()))));
    assertThat(text).contains("Common practice, no source.");
    assertThat(level.playerSpeed().name()).isEqualTo(name);
  }

  @Test
  void valuesMayBeTypedAsTextOrAsJson() {
    CheckLevel level = CheckLevel.preset("beginner");
    String text = CheckLevel.text("beginner");
    assertThat(CheckLevel.parse("beginner", text.replaceAll("[\\[\\]]", ""))).isEqualTo(level);
    assertThat(CheckLevel.parse("beginner", text.replaceAll("(?m): +no ", ": false ")))
        .isEqualTo(level);
    String json =
        level.values().entrySet().stream()
            .map(value -> "\"%s\": \"%s\"".formatted(value.getKey().key(), value.getValue()))
            .collect(Collectors.joining(", ", "{", "}"));
    assertThat(CheckLevel.parse("beginner", json)).isEqualTo(level);
  }

  @Test
  void theLowerLevelHasTheLowerPositionsAndTakesTheLongerTime() {
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

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          mute-on: .* # | mute-in: 4 s  # | there is no key 'mute-in'; did you mean 'mute-on', such as 'mute-on: 1.5 s'?
          mute-on: .* # | mute-on: soon # | 'soon' is not seconds such as 1.5 s
          mute-on: .* # | mute-on: 3 %  # | '3 %' is not seconds such as 1.5 s
          mute-on: .* # | mute-on:      # | 'mute-on' has no value; fill it in, such as 'mute-on: 1.5 s', or remove it
          mute-on: .* # | mute-off: 3 s # | the key 'mute-off' is given twice, first in line 38; write it once
          haste: .* #   | haste: 9.5 %  # | '9.5 %' is not a percentage such as 85 %
          clefs-bass: .* # | clefs-bass: [bass, soprano] # | 'soprano' is not clefs such as [alto, treble]
          extensions: .* # | extensions: some # | 'extensions' must be yes or no, not 'some'
          highest-bass: .* # | highest-bass: up # | 'up' is not a position such as 3, thumb or any
          plan: .* #    | plan: loud    # | 'loud' is not a name such as intermediate
          undivided-chord: .* # | undivided-chord: bad # | 'bad' is not unplayable, risky or worth-knowing
          stopped-at-once: .* # | stopped-at-once: two # | 'two' is not a whole number such as 2
          """)
  void aWrongLineIsNamed(String from, String to, String why) {
    String text = CheckLevel.text("intermediate");
    String wrong = text.replaceFirst("(?m)^" + from, to);
    int line = (int) text.lines().takeWhile(wrong.lines().toList()::contains).count() + 1;
    int named = why.contains("twice") ? line + 1 : line;
    assertThat(wrong).isNotEqualTo(text);
    refused(wrong, "our.yaml, line %d: %s".formatted(named, why));
  }

  @Test
  void missingKeysAreListed() {
    refused("plan: intermediate # mine\n", "our.yaml lacks 'tempo', 'haste', 'risky-haste', ");
    assertThatThrownBy(() -> CheckLevel.preset("virtuoso"))
        .hasMessage(
            "there is no level 'virtuoso'; choose one of advanced, common-practice, intermediate, beginner");
  }

  private static void refused(String text, String says) {
    assertThatThrownBy(() -> CheckLevel.parse("our.yaml", text))
        .isInstanceOf(FingeringException.class)
        .hasMessageContaining(says);
  }
}
