package fingering.search;

import fingering.scoring.MovementTimes;
import fingering.scoring.TransitionTime;
import fingering.tables.FingeringException;
import java.util.Arrays;

/**
 * A number for every edge between the grips of two moments: rows are the earlier grips, columns the
 * later ones. Safe for use by many threads once it is filled.
 */
final class CostMatrix {
  private final int columns;

  /** Row by row. As int, so that twice as many fit into the processor's cache. */
  private final int[] values;

  private int max;

  /** A matrix of zeros. */
  CostMatrix(int rows, int columns) {
    this.columns = columns;
    values = new int[rows * columns];
  }

  /**
   * Sets the numbers of a row, 0 or more, that were 0.
   *
   * @throws FingeringException if one is too large, which happens only with absurd weights
   */
  void put(int row, long[] numbers) {
    int first = row * columns;
    int highest = max;
    long bits = 0;
    for (int j = 0; j < columns; j++) {
      int number = (int) numbers[j];
      bits |= numbers[j];
      highest = Math.max(highest, number);
      values[first + j] = number;
    }
    if (bits > Integer.MAX_VALUE) {
      throw new FingeringException(
          "with these weights a single transition costs %d points; divide all of them by ten"
              .formatted(Arrays.stream(numbers).max().orElse(0)));
    }
    max = highest;
  }

  /**
   * A copy with the points for missing time added.
   *
   * @throws FingeringException if a sum is too large, which happens only with absurd weights
   */
  CostMatrix with(MovementTimes times, TransitionTime time) {
    int rows = values.length / columns;
    CostMatrix sum = new CostMatrix(rows, columns);
    long[] charges = times.charges(time);
    long[] row = new long[columns];
    for (int i = 0; i < rows; i++) {
      int first = i * columns;
      for (int j = 0; j < columns; j++) {
        row[j] = values[first + j];
      }
      times.add(charges, i, row);
      sum.put(i, row);
    }
    return sum;
  }

  long get(int row, int column) {
    return values[row * columns + column];
  }

  /** The largest number. */
  long max() {
    return max;
  }

  /** Lowers each score to the given one plus the number of its column, if that is less. */
  void relax(int row, long score, long[] scores) {
    int first = row * columns;
    for (int j = 0; j < columns; j++) {
      scores[j] = Math.min(scores[j], score + values[first + j]);
    }
  }
}
