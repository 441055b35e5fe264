package fingering.engraving.drawing;

import com.google.common.collect.ImmutableList;
import fingering.engraving.notes.Chord;
import fingering.engraving.spacing.BarLines;
import fingering.engraving.spacing.ColumnShape;
import fingering.engraving.spacing.HeadGlyphs;
import fingering.engraving.spacing.MeasureShape;
import fingering.engraving.spacing.SystemShape;
import fingering.music.NoteAddress;
import fingering.music.print.PrintedNote;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where the notes and times of a system stand. Times are in quarter notes from the start of the
 * part.
 */
final class Frame {
  /**
   * A note or rest in the system.
   *
   * @param note the note
   * @param chord its chord
   * @param column the shape of its column
   * @param columnX the x of the column
   * @param time its time
   */
  record Spot(PrintedNote note, Chord chord, ColumnShape column, double columnX, double time) {
    /** The left edge of its head. */
    double left() {
      Double x = column.heads().get(note.address());
      return columnX + (x == null ? 0 : x);
    }

    /** The right edge of its head. */
    double right() {
      return left() + HeadGlyphs.width(chord);
    }

    /** The middle of its head. */
    double middle() {
      return note.rest() ? columnX + column.middle(chord) : (left() + right()) / 2;
    }

    /** The y of its head. */
    double y() {
      return Chord.y(chord.steps().get(chord.notes().indexOf(note)));
    }
  }

  private final SystemShape system;
  private final Map<NoteAddress, Spot> spots = new LinkedHashMap<>();

  /** The y at which the stem of a chord ends, by the address of the chord. */
  private final Map<NoteAddress, Double> tips = new HashMap<>();

  Frame(SystemShape system) {
    this.system = system;
    for (int m = 0; m < system.measures().size(); m++) {
      MeasureShape measure = system.measures().get(m);
      double start = measure.notes().measure().start().doubleValue();
      for (int c = 0; c < measure.columns().size(); c++) {
        ColumnShape column = measure.columns().get(c);
        double x = system.places().get(m).columns().get(c);
        double time = start + column.column().onset().doubleValue();
        for (Chord chord : column.column().chords()) {
          for (PrintedNote note : chord.notes()) {
            spots.put(note.address(), new Spot(note, chord, column, x, time));
          }
        }
      }
    }
  }

  SystemShape shape() {
    return system;
  }

  /** All notes and rests, from left to right in each measure. */
  Iterable<Spot> spots() {
    return spots.values();
  }

  Optional<Spot> spot(NoteAddress address) {
    return Optional.ofNullable(spots.get(address));
  }

  Optional<Spot> spot(Chord chord) {
    return spot(chord.address());
  }

  void setTip(Chord chord, double y) {
    tips.put(chord.address(), y);
  }

  /** The y at which a stem ends; the outer head if there is no stem. */
  double tip(Chord chord) {
    Double tip = tips.get(chord.address());
    if (tip != null) {
      return tip;
    }
    return chord.up() ? chord.top() : chord.bottom();
  }

  /** The x at which the time of a note ends: the next column, or the bar line. */
  double end(Spot spot) {
    double next = Double.POSITIVE_INFINITY;
    for (Spot other : spots.values()) {
      if (other.columnX() > spot.columnX()) {
        next = Math.min(next, other.columnX() - other.column().left());
      }
    }
    double bar = system.places().get(measure(spot.time())).bar();
    return Math.min(next, bar - 0.3);
  }

  /** The x of the middle of a stem. */
  double stem(Spot spot) {
    return spot.columnX() + spot.column().stem(spot.chord());
  }

  /** The left end of the first measure, after the header. */
  double left() {
    return system.places().get(0).left();
  }

  /** The right end of the last measure. */
  double right() {
    return system.places().get(system.places().size() - 1).bar();
  }

  double from() {
    MeasureShape first = system.measures().get(0);
    return first.notes().measure().start().doubleValue() + first.from();
  }

  /** The time at which the system ends. */
  double to() {
    MeasureShape last = system.measures().get(system.measures().size() - 1);
    double start = last.notes().measure().start().doubleValue();
    if (last.closes()) {
      return start + last.rests() * last.notes().measure().length().doubleValue();
    }
    ImmutableList<ColumnShape> columns = last.columns();
    return start + columns.get(columns.size() - 1).column().onset().doubleValue() + 1e-6;
  }

  /** The index among the measures of the system of the one that contains a time. */
  int measure(double time) {
    List<MeasureShape> measures = system.measures();
    int index = 0;
    for (int i = 1; i < measures.size(); i++) {
      double start =
          measures.get(i).notes().measure().start().doubleValue() + measures.get(i).from();
      if (start <= time + 1e-9) {
        index = i;
      }
    }
    return index;
  }

  /** The left edge of the heads at a time, or of the next ones in the measure; else its end. */
  double x(double time) {
    int m = measure(time);
    MeasureShape measure = system.measures().get(m);
    double start = measure.notes().measure().start().doubleValue();
    double last = -1;
    double lastTime = 0;
    for (int c = 0; c < measure.columns().size(); c++) {
      double at = start + measure.columns().get(c).column().onset().doubleValue();
      double x = system.places().get(m).columns().get(c);
      if (at >= time - 1e-9) {
        if (at <= time + 1e-9 || last < 0) {
          return x;
        }
        return last + (x - last) * (time - lastTime) / (at - lastTime);
      }
      last = x;
      lastTime = at;
    }
    double end = start + measure.notes().measure().length().doubleValue() * measure.rests();
    double bar =
        system.places().get(m).bar() - BarLines.width(measure.notes().printed().end()) - 0.1;
    if (last < 0) {
      double left = system.places().get(m).left() + 1;
      return end <= start
          ? left
          : left + (bar - 1 - left) * Math.min(1, (time - start) / (end - start));
    }
    return end <= lastTime
        ? last
        : Math.min(bar, last + (bar - last) * (time - lastTime) / (end - lastTime));
  }
}
