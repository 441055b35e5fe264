package fingering.musicxml.file;

import static fingering.musicxml.ScoreText.START;
import static fingering.musicxml.ScoreText.measure;
import static fingering.musicxml.ScoreText.note;
import static fingering.musicxml.ScoreText.part;
import static fingering.musicxml.ScoreText.score;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.musicxml.Refusal;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import fingering.tables.FingeringException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ScoreLimitsTest {
  private static final String TWO_PARTS =
      score(
          part("Violin", "", measure("1", START, note("D5", 8), note("E5", 8)), measure("2")),
          part("Viola", "", measure("1", START, note("A4", 16)), measure("2")));

  private static Score read(String limits) {
    ScoreLimits set = ScoreLimits.DEFAULT.with(limits);
    return ScoreReader.read(ScoreFile.of(TWO_PARTS, ImmutableList.of(), set));
  }

  @ParameterizedTest
  @CsvSource({"parts, 2", "measures, 4", "notes, 3"})
  void aScoreIsReadUpToTheLimitAndRefusedBeyond(String limit, int holds) {
    assertThat(read(limit + "=" + holds).parts()).hasSize(2);
    assertThat(Refusal.of(() -> read(limit + "=" + (holds - 1))))
        .contains("The score has more than %d %s".formatted(holds - 1, limit))
        .contains("raise the limit '%s'".formatted(limit));
  }

  @Test
  void severalLimitsAreSetAtOnceAndOthersStay() {
    ScoreLimits limits = ScoreLimits.DEFAULT.with("measures=20000, BYTES=64m,notes=2K");

    assertThat(limits.of(ScoreLimit.MEASURES)).isEqualTo(20_000);
    assertThat(limits.of(ScoreLimit.BYTES)).isEqualTo(64L << 20);
    assertThat(limits.of(ScoreLimit.NOTES)).isEqualTo(2048);
    assertThat(limits.of(ScoreLimit.PARTS)).isEqualTo(ScoreLimit.PARTS.defaultValue());
    assertThat(ScoreLimits.DEFAULT.of(ScoreLimit.MEASURES)).isEqualTo(500_000);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "measures",
        "measures=",
        "measures=-1",
        "measures=1.5",
        "=5",
        "measures=1;notes=2",
        "measures=99999999999999999999",
        "notes=1,",
        "bytes=1T"
      })
  void invalidLimitsAreRefused(String text) {
    assertThatThrownBy(() -> ScoreLimits.DEFAULT.with(text))
        .isInstanceOf(FingeringException.class)
        .hasMessageContaining("write a name and a number");
  }

  @Test
  void anUnknownLimitIsRefusedWithAList() {
    assertThatThrownBy(() -> ScoreLimits.DEFAULT.with("pages=5"))
        .isInstanceOf(FingeringException.class)
        .hasMessage(
            "'pages' is not the name of a limit; choose one of bytes, unpacked, ratio, files, nesting, parts, measures, notes");
  }

  @ParameterizedTest
  @EnumSource(ScoreLimit.class)
  void valuesOutOfRangeAreRefusedWithTheRange(ScoreLimit limit) {
    for (long figure : new long[] {limit.min() - 1, limit.max() + 1, Long.MAX_VALUE}) {
      assertThatThrownBy(() -> ScoreLimits.DEFAULT.with(limit, figure))
          .isInstanceOf(FingeringException.class)
          .hasMessageContaining("from %d to %d".formatted(limit.min(), limit.max()));
    }
    assertThat(ScoreLimits.DEFAULT.with(limit, limit.max()).of(limit)).isEqualTo(limit.max());
    assertThat(ScoreLimits.DEFAULT.with(limit, limit.min()).of(limit)).isEqualTo(limit.min());
    assertThatThrownBy(() -> ScoreLimits.DEFAULT.with(limit.key() + "=999999999999999G"))
        .isInstanceOf(FingeringException.class);
  }

  @Test
  void everyLimitHasAValue() {
    assertThatThrownBy(() -> new ScoreLimits(ImmutableMap.of(ScoreLimit.BYTES, 5L)))
        .isInstanceOf(FingeringException.class);
  }
}
