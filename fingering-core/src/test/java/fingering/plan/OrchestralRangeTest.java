package fingering.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import fingering.music.Music;
import fingering.scoring.rules.StandardRules;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sounding ranges of orchestral parts: S. Adler, The Study of Orchestration, from memory. */
class OrchestralRangeTest {
  private static Plan plan(String instrument, String events) {
    return Planner.of(Music.on(instrument).notes(events), StandardRules.commonPractice())
        .plan(Brief.free("free"));
  }

  @ParameterizedTest
  @CsvSource({"violin, G3, E7", "viola, C3, E6", "cello, C2, A5", "bass, E1, Bb3"})
  void theLowestAndTheHighestNoteCanBePlayed(String instrument, String lowest, String highest) {
    Plan plan = plan(instrument, lowest + "/1 " + highest + "/1");
    PlannedNote low = plan.notes().get(0);
    PlannedNote high = plan.notes().get(1);
    assertThat(low.finger()).isEqualTo("0");
    assertThat(low.placement().string()).isEqualTo(4);
    assertThat(high.open()).isFalse();
    assertThat(high.placement().string()).isEqualTo(1);
  }

  @ParameterizedTest
  @CsvSource({"violin, F#3", "viola, B2", "cello, B1", "bass, Eb1"})
  void aNoteASemitoneTooLowIsRefused(String instrument, String note) {
    assertThatExceptionOfType(InfeasibleBriefException.class)
        .isThrownBy(() -> plan(instrument, note + "/1"))
        .withMessageContaining("below the lowest string");
  }

  // two octaves and more above the highest open string, where soloists end: to the fingerboard's
  // end
  @ParameterizedTest
  @CsvSource({"violin, A7, Bb7", "viola, D7, Eb7", "cello, E6, F6", "bass, B4, C5"})
  void soloistsGoUpToTheEndOfTheFingerboard(String instrument, String last, String beyond) {
    assertThat(plan(instrument, last + "/1").notes()).hasSize(1);
    assertThatExceptionOfType(InfeasibleBriefException.class)
        .isThrownBy(() -> plan(instrument, beyond + "/1"))
        .withMessageContaining("beyond the end of the fingerboard");
  }
}
