package fingering.music;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.google.common.collect.ImmutableList;
import fingering.tables.FingeringException;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Note values and metronome marks: common practice, no source. */
class TempoTest {
  @ParameterizedTest
  @CsvSource({
    "half=84, 168",
    "quarter=96, 96",
    "120, 120",
    "dotted-quarter=60, 90",
    "quarter.=60, 90",
    "eighth=100, 50",
    "16th=200, 50",
    "half..=4, 14",
    "double-dotted-half=4, 14"
  })
  void aMetronomeMarkGivesQuartersPerMinute(String mark, int quarters) {
    assertThat(Tempo.parse(mark).quartersPerMinute()).isEqualTo(BigFraction.of(quarters));
  }

  @Test
  void aDecimalTempoIsExact() {
    assertThat(Tempo.parse("eighth=66.6").quartersPerMinute()).isEqualTo(BigFraction.of(333, 10));
  }

  @Test
  void aTempoIsReadBack() {
    assertThat(Tempo.parse("half = 84.0")).hasToString("half=84");
    assertThat(Tempo.parse("dotted-quarter=63")).hasToString("dotted-quarter=63");
    assertThat(Tempo.parse("84", BeatUnit.HALF)).hasToString("half=84");
    assertThat(Tempo.parse("quarter=84", BeatUnit.HALF)).hasToString("quarter=84");
    assertThat(Tempo.parse(Tempo.DEFAULT.toString())).isEqualTo(Tempo.DEFAULT);
  }

  @ParameterizedTest
  @CsvSource({
    "60, 60.0",
    "quarter=60, quarter=6e1",
    "half=84.50, half=84.5",
    "quarter=0.5, quarter=.500",
    "16th=200, sixteenth=200",
    "dotted-16th=90, dotted-sixteenth=90.00"
  })
  void oneTempoInTwoSpellingsIsOneValueWithOneText(String one, String other) {
    assertThat(Tempo.parse(one))
        .isEqualTo(Tempo.parse(other))
        .hasSameHashCodeAs(Tempo.parse(other));
    assertThat(Tempo.parse(one)).hasToString(Tempo.parse(other).toString());
  }

  @Test
  void wholeTempiArePrintedWithoutDecimalsOrExponents() {
    assertThat(Tempo.parse("1e2")).hasToString("quarter=100");
    assertThat(Tempo.parse("600.0").perMinute().toPlainString()).isEqualTo("600");
    assertThat(Tempo.parse("600").perMinute()).hasToString("600");
  }

  @Test
  void sixteenthIsAnotherNameOf16th() {
    assertThat(new BeatUnit("sixteenth", 1)).isEqualTo(new BeatUnit("16th", 1));
    assertThat(BeatUnit.parse("Sixteenth.")).hasToString("dotted-16th");
  }

  @ParameterizedTest
  @ValueSource(strings = {"breve", "whole", "half", "quarter", "eighth", "16th", "32nd", "64th"})
  void everyNoteValueIsReadBack(String name) {
    for (int dots = 0; dots <= 2; dots++) {
      BeatUnit unit = new BeatUnit(name, dots);
      assertThat(BeatUnit.parse(unit.toString())).isEqualTo(unit);
      assertThat(BeatUnit.parse(name + ".".repeat(dots))).isEqualTo(unit);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "half=",
        "half=fast",
        "0",
        "-60",
        "1001",
        "crotchet=60",
        "half...=60",
        "double-half=60"
      })
  void textThatIsNotATempoIsRefused(String text) {
    assertThatExceptionOfType(FingeringException.class).isThrownBy(() -> Tempo.parse(text));
  }

  @Test
  void aMeasureNeedsANoteValueForItsBeats() {
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> new Measure(0, "1", BigFraction.ZERO, BigFraction.ONE, 0, 4, 0, ""));
  }

  @Test
  void aMomentWithoutANoteIsRefused() {
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(
            () -> new Moment(ImmutableList.of(), ImmutableList.of(), 0, 1, 0, false, false, false));
  }

  @Test
  void aPlaceIsShownAsMeasureAndBeat() {
    Passage passage = Music.viola().meter(6, 8).notes("C4/1.5 D4/1:3 E4/1:3 F4/1:3 G4/1.5");
    assertThat(passage.notes().stream().map(note -> note.place().toString()))
        .containsExactly(
            "measure 1, beat 1",
            "measure 1, beat 4",
            "measure 1, beat 4.67",
            "measure 1, beat 5.33",
            "measure 1, beat 6");
  }

  @Test
  void aHeldNoteSoundsThroughTheNextMoments() {
    Passage passage = Music.viola().tempo("quarter=60").notes("D3*2+B3/1 C4/1 B3/1");
    assertThat(passage.moments()).extracting(m -> m.sounding().size()).containsExactly(2, 2, 1);
    assertThat(passage.moments())
        .extracting(Moment::startMicros)
        .containsExactly(0L, 1_000_000L, 2_000_000L);
  }
}
