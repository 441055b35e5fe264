package fingering.engraving.glyph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PathBoxTest {
  @Test
  void linesReachTheirCorners() {
    assertThat(PathBox.of("M1 2H3V-1L0-.5Z")).isEqualTo(new Box(0, -1, 3, 2));
  }

  /** The curve reaches three quarters of the way to its two control points. */
  @Test
  void aCurveReachesItsExtremumAndNotItsControlPoints() {
    assertThat(PathBox.of("M0 0C0 1 2 1 2 0Z")).isEqualTo(new Box(0, 0, 2, .75));
    assertThat(PathBox.of("M0 0C1 0 1 2 0 2Z")).isEqualTo(new Box(0, 0, .75, 2));
  }

  @Test
  void aCurveCanTurnTwice() {
    Box box = PathBox.of("M0 0C1 3 2-3 3 0");
    assertThat(box.top()).isCloseTo(-Math.sqrt(3) / 2, within(1e-9));
    assertThat(box.bottom()).isCloseTo(Math.sqrt(3) / 2, within(1e-9));
  }

  @Test
  void aCommandCanBeRepeatedWithoutItsLetter() {
    assertThat(PathBox.of("M0 0L1 1 2-4-.5.5Z")).isEqualTo(new Box(-.5, -4, 2, 1));
  }

  @Test
  void afterTheEndOfAnOutlineTheNextBeginsAnywhere() {
    assertThat(PathBox.of("M0 0H1V1ZM5 5H6V7Z")).isEqualTo(new Box(0, 0, 6, 7));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "L1 1", "M1", "M0 0Q1 1 2 2", "M0 0l1 1", "M0 0C1 1 2 2", "M a"})
  void anythingElseIsRefused(String path) {
    assertThatIllegalArgumentException().isThrownBy(() -> PathBox.of(path));
  }
}
