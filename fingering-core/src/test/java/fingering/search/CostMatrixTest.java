package fingering.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import fingering.tables.FingeringException;
import org.junit.jupiter.api.Test;

class CostMatrixTest {
  /** From two grips to three. */
  private static CostMatrix filled() {
    CostMatrix table = new CostMatrix(2, 3);
    long[][] values = {{4, 9, 1}, {6, 2, 1}};
    for (int i = 0; i < 2; i++) {
      for (int j = 0; j < 3; j++) {
        table.put(i, j, values[i][j]);
      }
    }
    return table;
  }

  @Test
  void everyWayHasItsOwnPlace() {
    CostMatrix table = filled();
    assertThat(table.get(0, 1)).isEqualTo(9);
    assertThat(table.get(1, 0)).isEqualTo(6);
    assertThat(table.get(1, 2)).isEqualTo(1);
    assertThat(table.reached()).isEqualTo(3);
  }

  @Test
  void theDearestWayFromAGripIsKnown() {
    assertThat(filled().most(0)).isEqualTo(9);
    assertThat(filled().most(1)).isEqualTo(6);
    assertThat(filled().most()).isEqualTo(9);
  }

  @Test
  void aTableOfNothingIsEmpty() {
    assertThat(new CostMatrix(2, 3).empty()).isTrue();
    assertThat(filled().empty()).isFalse();
  }

  @Test
  void aWayExceedsTheOneFromAnotherGripToTheSamePlaceByAsMuchAsItIsDearer() {
    assertThat(filled().excess(0)).containsExactly(0, 7);
    assertThat(filled().excess(1)).containsExactly(2, 0);
  }

  @Test
  void aGripLeftMoreCheaplyToEveryPlaceExceedsByLessThanNothing() {
    CostMatrix table = new CostMatrix(2, 2);
    table.put(0, 0, 5);
    table.put(0, 1, 8);
    table.put(1, 0, 9);
    table.put(1, 1, 9);
    assertThat(table.excess(0)).containsExactly(0, -1);
  }

  @Test
  void sumsAreLoweredWhereTheWayIsCheaper() {
    long[] sums = {20, 15, 12};
    filled().lower(0, 10, sums);
    assertThat(sums).containsExactly(14, 15, 11);
  }

  @Test
  void theSlowerTheMusicTheMoreOfTheSecondTableIsAdded() {
    long[] sums = {100, 100, 100};
    filled().lower(1, 10, 3, filled(), sums);
    assertThat(sums).containsExactly(34, 18, 14);
  }

  @Test
  void aStepThatNoSensibleWeightsLeadToIsRefused() {
    CostMatrix table = new CostMatrix(1, 1);
    table.put(0, 0, Integer.MAX_VALUE);
    assertThat(table.get(0, 0)).isEqualTo(Integer.MAX_VALUE);
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> table.put(0, 0, Integer.MAX_VALUE + 1L))
        .withMessage(
            "by these weights a single step costs 2147483648 points; divide all of them by ten");
  }
}
