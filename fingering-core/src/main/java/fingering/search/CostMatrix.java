package fingering.search;

import fingering.tables.FingeringException;

/**
 * A number for every edge between the grips of two moments: rows are the earlier grips, columns the
 * later ones. Safe for use by many threads once it is filled.
 */
final class CostMatrix {
  private final int rows;
  private final int columns;

  /** Row by row. As int, so that twice as many fit into the processor's cache. */
  private final int[] values;

  private final int[] rowMax;
  private int max;

  /** A matrix of zeros. */
  CostMatrix(int rows, int columns) {
    this.rows = rows;
    this.columns = columns;
    values = new int[rows * columns];
    rowMax = new int[rows];
  }

  /**
   * Sets a number, 0 or more, that was 0.
   *
   * @throws FingeringException if it is too large, which happens only with absurd weights
   */
  void put(int row, int column, long value) {
    if (value > Integer.MAX_VALUE) {
      throw tooLarge(value);
    }
    values[row * columns + column] = (int) value;
    rowMax[row] = Math.max(rowMax[row], (int) value);
    max = Math.max(max, (int) value);
  }

  /**
   * Sets the numbers of a row, 0 or more, that were 0.
   *
   * @throws FingeringException if one is too large, which happens only with absurd weights
   */
  void put(int row, long[] numbers) {
    int first = row * columns;
    long highest = 0;
    for (int j = 0; j < columns; j++) {
      values[first + j] = (int) numbers[j];
      highest = Math.max(highest, numbers[j]);
    }
    if (highest > Integer.MAX_VALUE) {
      throw tooLarge(highest);
    }
    max = Math.max(max, (int) highest);
  }

  private static FingeringException tooLarge(long value) {
    return new FingeringException(
        "with these weights a single transition costs %d points; divide all of them by ten"
            .formatted(value));
  }

  /** Copies the numbers of a row into an array. */
  void copy(int row, long[] numbers) {
    int first = row * columns;
    for (int j = 0; j < columns; j++) {
      numbers[j] = values[first + j];
    }
  }

  int rows() {
    return rows;
  }

  int columns() {
    return columns;
  }

  long get(int row, int column) {
    return values[row * columns + column];
  }

  /** The largest number of a row. */
  long max(int row) {
    return rowMax[row];
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
