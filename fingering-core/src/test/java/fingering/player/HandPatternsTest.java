package fingering.player;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Hand shapes of violin and viola, and their names: common practice, no source. */
class HandPatternsTest {
  private final HandPatterns noneLearned = new HandPatterns(ImmutableSet.of());

  @Test
  void theHighestPlaceOfTheFourthFingerRequiresWholeStepsApart() {
    assertThat(noneLearned.unlearned(0, 4, 9)).isTrue();
    assertThat(new HandPatterns(ImmutableSet.of(FingerPattern.APART)).unlearned(1, 4, 6)).isFalse();
  }

  @ParameterizedTest
  @CsvSource({"0, 4, 10", "1, 2, 4", "1, 2, 0", "2, 1, -1", "1, 4, 7"})
  void spacingsInNoPatternAreNotUnlearned(int below, int above, int apart) {
    assertThat(noneLearned.unlearned(below, above, apart)).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "1, 1, a low first finger",
    "1, 2, the first finger in its usual place",
    "1, 3, a high first finger",
    "2, 3, a low second finger",
    "2, 4, a high second finger",
    "3, 5, the third finger in its usual place",
    "3, 6, a high third finger",
    "4, 6, a low fourth finger"
  })
  void placesAreNamedRelativeToTheUsualHand(int finger, int semitones, String described) {
    assertThat(HandPatterns.describePlace(finger, semitones)).isEqualTo(described);
  }
}
