package fingering.fingerboard;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Positions as violinists name them: common practice, no source. */
class ViolinHandTest {
  private final Taken violin = Taken.on("violin");

  @Test
  void aFlatByTheFirstFingerAndNaturalABySecondIsHalfPosition() {
    assertThat(violin.all("Ab3", 4, "1", "half")).isNotEmpty();
    assertThat(violin.all("A3", 4, "2", "half")).isNotEmpty();
    assertThat(violin.all("A3", 4, "2", "1st")).isEmpty();
  }

  @Test
  void aFlatByALowFirstFingerAndBFlatBySecondIsFirstPosition() {
    assertThat(violin.all("Ab3", 4, "1", "1st")).isNotEmpty().noneMatch(Placement::respelled);
    assertThat(violin.all("Bb3", 4, "2", "1st")).isNotEmpty().noneMatch(Placement::respelled);
  }

  @Test
  void lowAndHighSecondFingerOnTheDStringAreBothFirstPosition() {
    Placement low = violin.by("F4", 3, "2", "1st").top();
    Placement high = violin.by("F#4", 3, "2", "1st").top();
    assertThat(low.frame()).isEqualTo(high.frame());
    assertThat(high.semitones() - low.semitones()).isEqualTo(1);
    assertThat(low.stretch()).isZero();
    assertThat(high.stretch()).isZero();
  }

  @Test
  void gSharpWithTheFingerOfAFlatIsRespelled() {
    assertThat(violin.by("Ab4", 3, "4", "1st").top().respelled()).isFalse();
    assertThat(violin.by("Ab4", 3, "3", "1st").top().respelled()).isTrue();
    assertThat(violin.by("G#4", 3, "4", "1st").top().respelled()).isTrue();
    assertThat(violin.by("G#4", 3, "3", "1st").top().respelled()).isFalse();
  }

  @Test
  void theFourthFingerReachesUpForCOnTheEStringWithoutLeavingFirstPosition() {
    assertThat(violin.by("C6", 1, "4", "1st").top().stretch()).isPositive();
    assertThat(violin.by("B5", 1, "4", "1st").top().stretch()).isZero();
  }

  @Test
  void theFourthFingerInFirstPositionPlaysTheNextOpenString() {
    for (int string = 2; string <= 4; string++) {
      String open = violin.fingerboard().instrument().string(string - 1).pitch().toString();
      assertThat(violin.by(open, string, "4", "1st").top().semitones()).isEqualTo(7);
    }
  }

  @Test
  void theFirstFingerNeverStopsAtTheNut() {
    assertThat(violin.all("Fb5", 1, "1", "1st")).isEmpty();
  }

  @Test
  void anOpenStringAllowsEveryFrame() {
    assertThat(violin.all("A4", 2, "0", "1st")).hasSize(1);
    assertThat(violin.all("A4", 2, "0", "3rd")).hasSize(1);
    assertThat(violin.all("G##4", 2, "0", "3rd")).hasSize(1);
  }

  @Test
  void aNoteBelowTheLowestStringIsOutOfRange() {
    assertThat(violin.fingerboard().placements(fingering.tables.Pitch.parse("F#3"))).isEmpty();
  }
}
