package fingering.engraving.spacing;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableDoubleArray;
import fingering.engraving.notes.MeasureNotes;

/**
 * A measure, or part of one, with the distances that its columns need. Distance i leads to column
 * i, the last one to the bar line or to the end of the part.
 *
 * @param notes the notes of the whole measure
 * @param columns the columns of this part
 * @param least the least distances, in staff spaces
 * @param natural the distances of comfortably spaced music, at least the least ones
 * @param opens whether the measure begins here
 * @param closes whether it ends here
 * @param rests how many measures of rest it stands for; 1 for any other measure
 */
public record MeasureShape(
    MeasureNotes notes,
    ImmutableList<ColumnShape> columns,
    ImmutableDoubleArray least,
    ImmutableDoubleArray natural,
    boolean opens,
    boolean closes,
    int rests) {
  /** White before the first note of a measure. */
  static final double BEFORE = 0.8;

  /** The time from the start of the measure at which this part begins, in quarter notes. */
  public double from() {
    return opens || columns.isEmpty() ? 0 : columns.get(0).column().onset().doubleValue();
  }

  /** The sum of the least distances. */
  double leastWidth() {
    return least.stream().sum();
  }

  /** The width of its bar line, with the white on its left for dots. */
  double barWidth() {
    return closes ? BarLines.width(notes.printed().end()) : 0;
  }
}
