package fingering.engraving.spacing;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableDoubleArray;
import fingering.engraving.notes.Accidentals;
import fingering.engraving.notes.BeamGroup;
import fingering.engraving.notes.Chord;
import fingering.engraving.notes.Column;
import fingering.engraving.notes.MeasureNotes;
import fingering.engraving.notes.Tuplet;
import fingering.music.print.PrintedMeasure;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Spaces the columns of measures, and splits measures that are too wide for a system. */
public final class MeasureShapes {
  /** The width that a quarter note gets. */
  private static final double QUARTER = 3.9;

  /** The factor by which a note of twice the length gets more: a half 1.4 times a quarter. */
  private static final double DOUBLED = 1.4;

  /** The least white between two columns. */
  private static final double GAP = 0.3;

  private static final double GRACE_GAP = 0.2;

  /** The least white between a note and the bar line after it. */
  private static final double BEFORE_BAR = 0.5;

  private static final double WHOLE_REST = 6;
  private static final double LONG_REST = 9;

  /** The least number of measures of rest that become one. */
  private static final int FEWEST_RESTS = 2;

  private MeasureShapes() {}

  /** The shapes of all measures; successive measures of rest are one. */
  public static ImmutableList<MeasureShape> of(
      List<MeasureNotes> measures, Accidentals accidentals) {
    ImmutableList.Builder<MeasureShape> shapes = ImmutableList.builder();
    for (int i = 0; i < measures.size(); ) {
      int rests = rests(measures, i);
      MeasureNotes last = measures.get(i + rests - 1);
      shapes.add(
          rests > 1
              ? new MeasureShape(
                  new MeasureNotes(
                      measures.get(i).measure(),
                      measures.get(i).printed().withEnd(last.printed().end()),
                      ImmutableList.of(),
                      ImmutableList.of(),
                      ImmutableList.of()),
                  ImmutableList.of(),
                  ImmutableDoubleArray.of(LONG_REST),
                  ImmutableDoubleArray.of(LONG_REST),
                  true,
                  true,
                  rests)
              : WordRoom.widened(
                  of(measures.get(i), accidentals),
                  i + 1 < measures.size() ? Optional.of(measures.get(i + 1)) : Optional.empty()));
      i += rests;
    }
    return shapes.build();
  }

  /** The number of measures of rest from one on that nothing divides; 1 if there are fewer. */
  private static int rests(List<MeasureNotes> measures, int from) {
    int count = 0;
    while (from + count < measures.size() && measures.get(from + count).silent()) {
      if (count > 0 && divided(measures.get(from + count - 1), measures.get(from + count))) {
        break;
      }
      count++;
    }
    return count < FEWEST_RESTS ? 1 : count;
  }

  private static boolean divided(MeasureNotes before, MeasureNotes after) {
    return before.printed().end() != PrintedMeasure.Bar.SINGLE
        || after.printed().repeatStart()
        || !after.measure().rehearsal().isEmpty()
        || before.measure().fifths() != after.measure().fifths()
        || Signatures.meterChanges(before.measure(), after.measure())
        || !before.lastClef().equals(after.printed().clef());
  }

  private static MeasureShape of(MeasureNotes notes, Accidentals accidentals) {
    List<ColumnShape> columns = new ArrayList<>();
    for (Column column : notes.columns()) {
      columns.add(ColumnShape.of(column, accidentals, notes.printed()));
    }
    return part(notes, columns, 0, columns.size());
  }

  /** The part of a measure from a column to before another one. */
  private static MeasureShape part(MeasureNotes notes, List<ColumnShape> all, int from, int to) {
    List<ColumnShape> columns = all.subList(from, to);
    double[] least = new double[columns.size() + 1];
    double[] natural = new double[columns.size() + 1];
    if (columns.isEmpty()) {
      least[0] = WHOLE_REST;
      natural[0] = WHOLE_REST;
    }
    for (int i = 0; i < columns.size(); i++) {
      ColumnShape column = columns.get(i);
      if (i == 0) {
        least[0] = MeasureShape.BEFORE + column.left();
        natural[0] = least[0] + 0.3;
      }
      double after = i + 1 < columns.size() ? columns.get(i + 1).left() + gap(column) : BEFORE_BAR;
      least[i + 1] = Math.max(0.6, column.right() + after);
      natural[i + 1] = Math.max(least[i + 1], spring(notes, all, from + i) + 0.4 * (after - GAP));
    }
    boolean rest = columns.size() == 1 && columns.get(0).signs().isEmpty();
    if (rest) {
      least[0] = 0;
      natural[0] = 0;
      least[1] = WHOLE_REST;
      natural[1] = WHOLE_REST;
    }
    return new MeasureShape(
        notes,
        ImmutableList.copyOf(columns),
        ImmutableDoubleArray.copyOf(least),
        ImmutableDoubleArray.copyOf(natural),
        from == 0,
        to == all.size(),
        1);
  }

  private static double gap(ColumnShape column) {
    return column.column().grace() ? GRACE_GAP : GAP;
  }

  /** The distance that the time to the next column asks for. */
  private static double spring(MeasureNotes notes, List<ColumnShape> columns, int index) {
    ColumnShape column = columns.get(index);
    if (column.column().grace()) {
      return 0;
    }
    double onset = column.column().onset().doubleValue();
    double next =
        index + 1 < columns.size()
            ? columns.get(index + 1).column().onset().doubleValue()
            : notes.measure().length().doubleValue();
    double time = Math.max(1.0 / 64, next - onset);
    return QUARTER * Math.pow(DOUBLED, Math.log(time) / Math.log(2));
  }

  /**
   * The shape in parts that are at most so wide if possible, split at beats where no beam or tuplet
   * is broken.
   *
   * @param widest in staff spaces
   */
  static List<MeasureShape> split(MeasureShape shape, double widest) {
    if (shape.leastWidth() + shape.barWidth() <= widest || shape.columns().size() < 2) {
      return List.of(shape);
    }
    List<ColumnShape> all = shape.columns();
    boolean[] together = together(shape.notes(), all);
    List<MeasureShape> parts = new ArrayList<>();
    int from = 0;
    while (from < all.size()) {
      int best = all.size();
      for (int to = all.size(); to > from; to--) {
        boolean allowed = to == all.size() || !together[to];
        if (allowed) {
          best = to;
          MeasureShape part = part(shape.notes(), all, from, to);
          if (part.leastWidth() + part.barWidth() <= widest) {
            break;
          }
        }
      }
      parts.add(part(shape.notes(), all, from, best));
      from = best;
    }
    return parts;
  }

  /** Whether a column must not begin a part: it is under a beam or tuplet that began before. */
  private static boolean[] together(MeasureNotes notes, List<ColumnShape> columns) {
    Map<Chord, Integer> index = new HashMap<>();
    for (int i = 0; i < columns.size(); i++) {
      for (Chord chord : columns.get(i).column().chords()) {
        index.put(chord, i);
      }
    }
    boolean[] together = new boolean[columns.size()];
    for (BeamGroup beam : notes.beams()) {
      join(together, index, beam.chords());
    }
    for (Tuplet tuplet : notes.tuplets()) {
      join(together, index, tuplet.chords());
    }
    for (int i = 1; i < columns.size(); i++) {
      together[i] |= columns.get(i - 1).column().grace();
    }
    return together;
  }

  private static void join(boolean[] together, Map<Chord, Integer> index, List<Chord> chords) {
    int first = index.getOrDefault(chords.get(0), 0);
    int last = index.getOrDefault(chords.get(chords.size() - 1), first);
    for (int i = first + 1; i <= last; i++) {
      together[i] = true;
    }
  }
}
