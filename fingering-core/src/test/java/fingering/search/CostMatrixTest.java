package fingering.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import fingering.tables.FingeringException;
import org.junit.jupiter.api.Test;

class CostMatrixTest {
  /** Two grips, then three. */
  private static CostMatrix filled() {
    CostMatrix matrix = new CostMatrix(2, 3);
    long[][] values = {{4, 9, 1}, {6, 2, 1}};
    for (int i = 0; i < 2; i++) {
      matrix.put(i, values[i]);
    }
    return matrix;
  }

  @Test
  void everyEdgeHasItsOwnNumber() {
    CostMatrix matrix = filled();
    assertThat(matrix.get(0, 1)).isEqualTo(9);
    assertThat(matrix.get(1, 0)).isEqualTo(6);
    assertThat(matrix.get(1, 2)).isEqualTo(1);
  }

  @Test
  void theMostExpensiveEdgeIsKnown() {
    assertThat(filled().max()).isEqualTo(9);
  }

  @Test
  void scoresAreLoweredWhereTheEdgeIsCheaper() {
    long[] scores = {20, 15, 12};
    filled().relax(0, 10, scores);
    assertThat(scores).containsExactly(14, 15, 11);
  }

  @Test
  void aNumberThatNoSensibleWeightsLeadToIsRefused() {
    CostMatrix matrix = new CostMatrix(1, 1);
    matrix.put(0, new long[] {Integer.MAX_VALUE});
    assertThat(matrix.get(0, 0)).isEqualTo(Integer.MAX_VALUE);
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> matrix.put(0, new long[] {Integer.MAX_VALUE + 1L}))
        .withMessage(
            "with these weights a single transition costs 2147483648 points; divide all of them by ten");
  }
}
