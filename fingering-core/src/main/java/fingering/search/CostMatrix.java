package fingering.search;

import fingering.tables.FingeringException;
import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * A number for every edge between the grips of two moments: rows are the earlier grips, columns the
 * later ones. Safe for use by many threads once it is filled.
 */
final class CostMatrix {
  private static final AtomicReferenceArray<long[]> NONE = new AtomicReferenceArray<>(0);

  private final int columns;

  /** Row by row. As int, so that twice as many fit into the processor's cache. */
  private final int[] values;

  /** Indexed by row: {@link #excess}; null where not computed yet. */
  private volatile AtomicReferenceArray<long[]> excess = NONE;

  private final int[] rowMax;
  private int max;

  /** A matrix of zeros. */
  CostMatrix(int rows, int columns) {
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
      throw new FingeringException(
          "with these weights a single transition costs %d points; divide all of them by ten"
              .formatted(value));
    }
    values[row * columns + column] = (int) value;
    rowMax[row] = Math.max(rowMax[row], (int) value);
    max = Math.max(max, (int) value);
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

  /**
   * Indexed by other row: the largest amount by which a number of this row exceeds the number of
   * the other row in the same column. Callers must not change the array.
   */
  long[] excess(int row) {
    AtomicReferenceArray<long[]> all = excess;
    if (all == NONE) {
      // Two threads may both get here. They compute the same values, so either result will do.
      all = new AtomicReferenceArray<>(rowMax.length);
      excess = all;
    }
    long[] known = all.get(row);
    if (known == null) {
      known = new long[rowMax.length];
      for (int i = 0; i < known.length; i++) {
        known[i] = excessOver(row, i);
      }
      all.set(row, known);
    }
    return known;
  }

  private long excessOver(int row, int other) {
    long greatest = Long.MIN_VALUE;
    for (int j = 0; j < columns; j++) {
      greatest = Math.max(greatest, (long) values[row * columns + j] - values[other * columns + j]);
    }
    return greatest;
  }

  /** Lowers each score to the given one plus the number of its column, if that is less. */
  void relax(int row, long score, long[] scores) {
    int first = row * columns;
    for (int j = 0; j < columns; j++) {
      scores[j] = Math.min(scores[j], score + values[first + j]);
    }
  }
}
