package fingering.page.staff;

import fingering.music.Measure;
import fingering.music.print.PrintedMeasure;
import fingering.music.print.PrintedPart.Wedge;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** A piece of the strip during layout: a measure, or some beats of one. */
final class StripPiece {
  final Measure measure;
  final PrintedMeasure printed;
  final Columns source;
  final List<Column> columns;
  final boolean first;
  boolean last;

  /** The width in pixels. */
  double width;

  /** The x of the bar line, for the last piece of a measure. */
  double bar;

  /** Text above the staff, and dynamics below it. */
  List<TextRow.Placed> words = new ArrayList<>();

  List<TextRow.Placed> dynamics = new ArrayList<>();

  StripPiece(
      Measure measure,
      PrintedMeasure printed,
      Columns source,
      List<Column> columns,
      boolean first) {
    this.measure = measure;
    this.printed = printed;
    this.source = source;
    this.columns = columns;
    this.first = first;
  }

  /** The key at the end of its measure, as far as it is printed there. */
  int lastKey() {
    return source.lastKey.orElse(measure.fifths());
  }

  /** The start, in quarter notes from the start of the measure. */
  BigFraction from() {
    return first || columns.isEmpty() ? BigFraction.ZERO : columns.get(0).onset;
  }

  /** The end, where the next piece begins. */
  BigFraction to(List<StripPiece> spans, int index) {
    return last || index + 1 >= spans.size() ? measure.length() : spans.get(index + 1).from();
  }

  /** The x of a time in quarter notes from the start of the measure, interpolated. */
  double x(double time) {
    double beforeTime = from().doubleValue();
    double beforeX = columns.isEmpty() ? 6 : Math.max(2, columns.get(0).x - Glyphs.HEAD);
    for (Column column : columns) {
      double at = column.onset.doubleValue();
      if (at >= time) {
        return at == beforeTime
            ? column.x
            : beforeX + (column.x - beforeX) * (time - beforeTime) / (at - beforeTime);
      }
      beforeTime = at;
      beforeX = column.x;
    }
    double end = measure.length().doubleValue();
    double right = (last ? bar : width) - 4;
    return end <= beforeTime
        ? right
        : beforeX + (right - beforeX) * Math.min(1, (time - beforeTime) / (end - beforeTime));
  }

  /** Whether part of a hairpin is in this piece. */
  boolean touches(Wedge wedge, double from, double to) {
    return wedge.start().doubleValue() < to && wedge.end().doubleValue() > from;
  }

  /** The groups of stems in this piece, limited to its stems; groups of one are left out. */
  List<List<Stem>> inside(List<List<Stem>> groups) {
    List<Stem> mine = columns.stream().flatMap(column -> column.stems.stream()).toList();
    List<List<Stem>> inside = new ArrayList<>();
    for (List<Stem> group : groups) {
      List<Stem> kept = group.stream().filter(mine::contains).toList();
      if (kept.size() > 1) {
        inside.add(kept);
      }
    }
    return inside;
  }
}
