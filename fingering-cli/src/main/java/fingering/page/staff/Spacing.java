package fingering.page.staff;

import fingering.music.Measure;
import fingering.music.print.Clef;
import fingering.music.print.PrintedMeasure;
import fingering.music.print.PrintedMeasure.Bar;
import fingering.music.print.PrintedText;
import fingering.music.print.PrintedText.Kind;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Spaces the columns of a measure, and splits measures that are too wide for a phone. */
final class Spacing {
  private static final double BEFORE = 8;
  private static final double AFTER = 9;
  private static final double GRACE = 12;
  private static final double REPEAT = 12;

  private final DrawnAccidentals accidentals;
  private final double narrowest;
  private final double widest;

  /**
   * Creates a spacing.
   *
   * @param narrowest the least width of a piece in pixels
   * @param widest the width above which a measure is split if possible
   */
  Spacing(DrawnAccidentals accidentals, double narrowest, double widest) {
    this.accidentals = accidentals;
    this.narrowest = narrowest;
    this.widest = widest;
  }

  /**
   * What a measure announces at its end about the next one.
   *
   * @param measure the next measure
   * @param clef its clef
   */
  record Next(Measure measure, Clef clef) {}

  /** The pieces of a measure. */
  List<StripPiece> spans(
      Measure measure,
      PrintedMeasure printed,
      Columns columns,
      boolean firstOfAll,
      Optional<Next> next) {
    double start = BEFORE + (printed.repeatStart() ? REPEAT : 0);
    if (firstOfAll) {
      start += Signature.meterWidth(measure.beats(), measure.beatType());
    }
    List<Column> all = columns.columns;
    List<StripPiece> spans = new ArrayList<>();
    StripPiece open = new StripPiece(measure, printed, columns, new ArrayList<>(), true);
    double x = start;
    for (int i = 0; i < all.size(); i++) {
      Column column = all.get(i);
      double left = Math.max(column.left(accidentals), column.text());
      if (i == 0 || open.columns.isEmpty()) {
        x += left;
      } else {
        x += step(all.get(i - 1), column);
      }
      if (!open.columns.isEmpty() && cuts(all, i, x)) {
        end(open, open.columns.get(open.columns.size() - 1));
        spans.add(open);
        open = new StripPiece(measure, printed, columns, new ArrayList<>(), false);
        x = left + 3;
      }
      x = Math.ceil(x);
      column.x = x;
      open.columns.add(column);
    }
    if (open.columns.isEmpty()) {
      open.width = x + 20;
    } else {
      end(open, open.columns.get(open.columns.size() - 1));
    }
    open.width += barWidth(printed.end());
    open.last = true;
    spans.add(open);
    for (StripPiece span : spans) {
      texts(span, spans);
      span.width = Math.ceil(Math.max(narrowest, span.width));
    }
    announce(open, next);
    return spans;
  }

  /** The width of a bar line beyond that of a single one. */
  private static double barWidth(Bar end) {
    return switch (end) {
      case SINGLE, DASHED, DOTTED, TICK, SHORT, NONE -> 0;
      case DOUBLE -> 3;
      case FINAL -> 6;
      case REPEAT -> REPEAT;
    };
  }

  private double step(Column before, Column after) {
    double heads = before.right() + after.left(accidentals) + 3;
    double texts = before.text() + after.text() + 1;
    double label = before.cells.stream().mapToDouble(Column.Cell::labelWidth).max().orElse(0);
    double time = before.grace ? GRACE : timeWidth(after.onset.subtract(before.onset));
    return Math.max(Math.max(heads, texts), Math.max(label, time));
  }

  /** The width of a duration: a note twice as long is only a little wider, as in print. */
  private static double timeWidth(BigFraction length) {
    return 10 + 7 * Math.log(1 + 4 * length.doubleValue()) / Math.log(2);
  }

  private static void end(StripPiece span, Column last) {
    double label = last.cells.stream().mapToDouble(Column.Cell::labelWidth).max().orElse(0);
    double time = last.grace ? GRACE : 10;
    span.width =
        last.x + Math.max(Math.max(last.right(), last.text()) + AFTER, Math.max(label, time) + 4);
  }

  /** Whether the piece ends before a column: on a beat if there is one in time, else anywhere. */
  private boolean cuts(List<Column> all, int index, double x) {
    Column column = all.get(index);
    if (index > 0 && all.get(index - 1).grace) {
      return false;
    }
    double rest = 0;
    for (int i = index + 1; i < all.size() && !onBeat(all.get(i)); i++) {
      rest += step(all.get(i - 1), all.get(i));
    }
    double end = x + rest + 24;
    return onBeat(column) ? end > widest : x + 24 > widest;
  }

  private static boolean onBeat(Column column) {
    return column.onset.getDenominator().equals(BigInteger.ONE);
  }

  private static void texts(StripPiece span, List<StripPiece> spans) {
    TextRow words = new TextRow(StaffStyle.WORDS);
    TextRow dynamics = new TextRow(StaffStyle.DYNAMICS);
    BigFraction to = span.to(spans, spans.indexOf(span));
    for (PrintedText text : span.printed.texts()) {
      if (text.kind() == Kind.REHEARSAL) {
        // Drawn with the measure.
        continue;
      }
      BigFraction onset = text.place().onset();
      boolean here =
          (onset.compareTo(span.from()) >= 0 || span.first)
              && (onset.compareTo(to) < 0 || span.last);
      if (here) {
        double x = span.x(onset.doubleValue());
        TextRow row = text.kind() == Kind.DYNAMIC ? dynamics : words;
        row.add(x - 5, text.kind() == Kind.TEMPO ? text.text().replace("=", " = ") : text.text());
      }
    }
    span.width = Math.max(span.width, Math.max(words.needed(), dynamics.needed()));
    span.words = words.placed(span.width);
    span.dynamics = dynamics.placed(span.width);
  }

  private static void announce(StripPiece last, Optional<Next> next) {
    if (next.isPresent() && !next.get().clef().equals(last.source.lastClef)) {
      last.width += Column.CLEF;
    }
    last.bar = last.width;
    if (next.isPresent()) {
      Measure after = next.get().measure();
      int before = last.lastKey();
      double key = after.fifths() == before ? 0 : Signature.keyWidth(after.fifths(), before) + 6;
      double meter =
          meterChanges(last.measure, after)
              ? Signature.meterWidth(after.beats(), after.beatType()) + 2
              : 0;
      last.width = Math.ceil(last.width + key + meter);
    }
  }

  /** Whether the time signature changes in the next measure. */
  static boolean meterChanges(Measure measure, Measure after) {
    return after.beats() != measure.beats() || after.beatType() != measure.beatType();
  }
}
