package fingering.engraving.glyph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class BoxTest {
  private static final Box BOX = new Box(1, -2, 4, 2);

  @Test
  void movesAndScales() {
    assertThat(BOX.width()).isEqualTo(3);
    assertThat(BOX.height()).isEqualTo(4);
    assertThat(BOX.moved(1, 10)).isEqualTo(new Box(2, 8, 5, 12));
    assertThat(BOX.scaled(.5)).isEqualTo(new Box(.5, -1, 2, 1));
  }

  @Test
  void theUnionHoldsBoth() {
    assertThat(BOX.union(new Box(0, 0, 2, 5))).isEqualTo(new Box(0, -2, 4, 5));
  }

  @Test
  void boxesThatOnlyTouchDoNotOverlap() {
    assertThat(BOX.overlaps(BOX.moved(3, 0))).isFalse();
    assertThat(BOX.overlaps(BOX.moved(-3, 0))).isFalse();
    assertThat(BOX.overlaps(BOX.moved(0, 4))).isFalse();
    assertThat(BOX.overlaps(BOX.moved(0, -4))).isFalse();
    assertThat(BOX.overlaps(BOX.moved(2.9, -3.9))).isTrue();
  }

  @Test
  void edgesInTheWrongOrderAreRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Box(1, 0, 0, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Box(0, 1, 1, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new Box(Double.NaN, 0, 1, 1));
  }
}
