package fingering.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.common.collect.ImmutableSet;
import fingering.music.Tempo;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Beat conversion, metronome settings, and examples of ladders (common practice, no source). */
class TempoLadderTest {

  /** Arithmetic of note values: two quarters to a half, three eighths to a dotted quarter. */
  @ParameterizedTest
  @CsvSource({
    "half=72, quarter, quarter=144",
    "quarter=144, half, half=72",
    "dotted-quarter=40, eighth, eighth=120",
    "eighth=120, dotted-quarter, dotted-quarter=40",
    "dotted-half=50, quarter, quarter=150",
    "dotted-half=50, half, half=75",
    "quarter=100, dotted-quarter, dotted-quarter=66.66",
    "whole=30, 16th, 16th=480"
  })
  void tempoIsConvertedToAnotherNoteValue(String tempo, String unit, String converted) {
    Tempo expected = Tempo.parse(converted);
    assertThat(BeatConversion.in(Tempo.parse(tempo), expected.unit()).toString())
        .isEqualTo(expected.toString());
    assertThat(expected.unit().toString()).isEqualTo(unit);
  }

  /** Common practice, no source. */
  @ParameterizedTest
  @CsvSource({
    "quarter=60, quarter=60",
    "quarter=59, eighth=118",
    "quarter=29, 16th=116",
    "dotted-quarter=50, eighth=150",
    "half=40, quarter=80",
    "quarter=208, quarter=208",
    "quarter=216, half=108",
    "eighth=500, half=125"
  })
  void slowClicksAreSubdividedAndFastOnesCombined(String tempo, String clicks) {
    assertThat(BeatConversion.clicks(Tempo.parse(tempo)).toString()).isEqualTo(clicks);
  }

  /**
   * The scale of Maelzel's pendulum metronome: by twos from 40, threes from 60, fours from 72,
   * sixes from 120, eights from 144 to 208; 39 marks (common practice, no source; from memory).
   */
  @Test
  void traditionalMetronomeHasThirtyNineMarks() {
    List<Integer> marks = MetronomeScale.marks();
    assertThat(marks).hasSize(39).startsWith(40).endsWith(208);
    for (int i = 1; i < marks.size(); i++) {
      int before = marks.get(i - 1);
      int by = before < 60 ? 2 : before < 72 ? 3 : before < 120 ? 4 : before < 144 ? 6 : 8;
      assertThat(marks.get(i) - before).isEqualTo(by);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "73, 72, 76",
    "72, 72, 76",
    "40, 40, 42",
    "39, 38, 40",
    "31, 30, 31.5",
    "208, 208, 216",
    "213, 208, 216",
    "430, 416, 432"
  })
  void traditionalMetronomeHasMarksBelowAndAbove(String at, String below, String above) {
    Tempo tempo = Tempo.parse(at);
    assertThat(MetronomeScale.TRADITIONAL.atMost(tempo).toString()).isEqualTo("quarter=" + below);
    assertThat(MetronomeScale.TRADITIONAL.above(tempo).toString()).isEqualTo("quarter=" + above);
  }

  private static LadderRequest request(String clean, String goal, String first, String by) {
    return new LadderRequest(
        Tempo.parse(clean),
        Tempo.parse(goal),
        LocalDate.parse(first),
        LocalDate.parse(by),
        ImmutableSet.of(DayOfWeek.SUNDAY));
  }

  private static StepSize steps(String comfort) {
    return new StepSize(MetronomeScale.EXACT, Optional.of(Tempo.parse(comfort)));
  }

  @Test
  void stepsAreSmallerNearAndAboveTheComfortableTempo() {
    StepSize size = steps("100");
    assertThat(size.up(Tempo.parse("80"))).isEqualTo(Tempo.parse("84"));
    assertThat(size.up(Tempo.parse("86"))).isEqualTo(Tempo.parse("88"));
    assertThat(size.up(Tempo.parse("100"))).isEqualTo(Tempo.parse("101"));
    assertThat(size.up(Tempo.parse("160"))).isEqualTo(Tempo.parse("162"));
  }

  @Test
  void comfortableTempoMayCountAnotherNoteValue() {
    StepSize quarters = steps("100");
    StepSize halves = new StepSize(MetronomeScale.EXACT, Optional.of(Tempo.parse("half=50")));
    for (String tempo : List.of("80", "86", "100", "160")) {
      assertThat(halves.up(Tempo.parse(tempo))).isEqualTo(quarters.up(Tempo.parse(tempo)));
    }
  }

  /** 832 is the fastest traditional setting; without a next setting there is no further step. */
  @Test
  void tempiBeyondTheFastestSettingHaveALadder() {
    TempoLadder traditional =
        TempoLadder.of(
            request("16th=900", "16th=900", "2026-11-23", "2026-12-12"),
            new StepSize(MetronomeScale.TRADITIONAL, Optional.empty()));
    assertThat(traditional.reachable()).isEqualTo(Tempo.parse("16th=900"));
    TempoLadder exact =
        TempoLadder.of(
            request("16th=970", "16th=1000", "2026-11-23", "2026-12-12"),
            new StepSize(MetronomeScale.EXACT, Optional.empty()));
    assertThat(exact.reachesGoal()).isTrue();
  }

  @Test
  void largeStepIsPreparedForSeveralDays() {
    LadderRequest request = request("quarter=92", "quarter=100", "2026-11-16", "2026-12-12");
    StepSize size = new StepSize(MetronomeScale.TRADITIONAL, Optional.of(Tempo.parse("100")));
    List<String> tops =
        TempoLadder.of(request, size).days().stream()
            .filter(day -> day.kind() == PracticeDay.Kind.PRACTICE)
            .map(day -> day.top().perMinute().toPlainString())
            .distinct()
            .toList();
    assertThat(tops).containsExactly("92", "96", "100");
  }

  @Test
  void cleanTempoIsConvertedToTheUnitOfTheGoal() {
    LadderRequest request = request("half=36", "quarter=96", "2026-11-23", "2026-12-12");
    assertThat(request.clean().toString()).isEqualTo("quarter=72");
  }

  @Test
  void restDaysHaveNoStepsAndTheEveNoNewTempo() {
    TempoLadder ladder =
        TempoLadder.of(request("60", "96", "2026-11-23", "2026-12-12"), steps("95"));
    assertThat(ladder.days()).hasSize(20);
    assertThat(ladder.reachesGoal()).isTrue();
    assertThat(
            ladder.days().stream()
                .filter(day -> day.kind() == PracticeDay.Kind.REST)
                .map(day -> day.date().toString()))
        .containsExactly("2026-11-29", "2026-12-06");
    PracticeDay eve = ladder.days().get(18);
    assertThat(eve.kind()).isEqualTo(PracticeDay.Kind.EVE);
    assertThat(eve.runThroughs()).isEqualTo(1);
    assertThat(eve.steps()).hasSize(2);
    assertThat(ladder.days().get(17).top()).isEqualTo(eve.top());
  }

  @Test
  void tooFewDaysLowerTheReachableTempo() {
    TempoLadder ladder =
        TempoLadder.of(request("72", "132", "2026-12-07", "2026-12-12"), steps("140"));
    assertThat(ladder.reachesGoal()).isFalse();
    assertThat(ladder.reachable().toString()).isEqualTo("quarter=85");
    assertThat(ladder.days().get(5).top()).isEqualTo(ladder.reachable());
  }

  @Test
  void impossibleRequestsAreRefused() {
    assertThatThrownBy(() -> request("72", "132", "2026-12-13", "2026-12-12"))
        .hasMessageContaining("before the first day of practice, 2026-12-13");
    assertThatThrownBy(() -> request("72", "132", "2026-12-12", "2029-12-12"))
        .hasMessageContaining("more than two years");
    assertThatThrownBy(() -> request("5", "132", "2026-12-01", "2026-12-12"))
        .hasMessageContaining("too slow");
  }
}
