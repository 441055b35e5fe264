package fingering.engraving.spacing;

import com.google.common.primitives.ImmutableDoubleArray;
import fingering.engraving.glyph.GlyphRow;
import fingering.engraving.notes.MeasureNotes;
import fingering.engraving.notes.TextSides;
import fingering.music.print.PrintedText;
import fingering.svg.TextWidth;
import java.util.List;
import java.util.Optional;

/** Makes room for words, so that the next ones can stand beside them instead of above. */
final class WordRoom {
  /** The size of words over the staff. */
  private static final double SIZE = 1.9;

  /** White between two texts. */
  private static final double GAP = 0.8;

  /** A metronome mark's note and equals sign. */
  private static final double NOTE = 2.5;

  /** The most that words widen notes. */
  private static final double MOST = 1.7;

  private final MeasureShape shape;
  private final double[] natural;

  private WordRoom(MeasureShape shape) {
    this.shape = shape;
    natural = shape.natural().toArray();
  }

  /** The measure with more natural room where its words would run into the next ones. */
  static MeasureShape widened(MeasureShape shape, Optional<MeasureNotes> next) {
    List<PrintedText> texts = shape.notes().printed().texts();
    if (texts.isEmpty() || shape.columns().isEmpty()) {
      return shape;
    }
    WordRoom room = new WordRoom(shape);
    for (PrintedText text : texts) {
      room.widen(text, next);
    }
    return new MeasureShape(
        shape.notes(),
        shape.columns(),
        shape.least(),
        ImmutableDoubleArray.copyOf(room.natural),
        shape.opens(),
        shape.closes(),
        shape.rests());
  }

  private void widen(PrintedText text, Optional<MeasureNotes> next) {
    double width = 0;
    Optional<PrintedText> after = Optional.empty();
    for (PrintedText other : shape.notes().printed().texts()) {
      boolean beside = TextSides.row(other) == TextSides.row(text);
      if (beside && other.start().compareTo(text.start()) == 0) {
        width += width(other) + GAP;
      } else if (beside && after.isEmpty() && other.start().compareTo(text.start()) > 0) {
        after = Optional.of(other);
      }
    }
    int to = after.map(this::column).orElse(shape.columns().size());
    if (after.isEmpty() && !begins(next, text)) {
      return;
    }
    int from = column(text);
    double room = after.isEmpty() ? MeasureShape.BEFORE : 0;
    double sum = 0;
    for (int i = from + 1; i <= to; i++) {
      sum += natural[i];
    }
    if (sum > 0 && width > room + sum) {
      double factor = Math.min(MOST, (width - room) / sum);
      for (int i = from + 1; i <= to; i++) {
        natural[i] *= factor;
      }
    }
  }

  /** Whether the next measure begins with a text in the same row. */
  private static boolean begins(Optional<MeasureNotes> next, PrintedText text) {
    return next.isPresent()
        && next.get().printed().texts().stream()
            .anyMatch(
                other ->
                    TextSides.row(other) == TextSides.row(text)
                        && other.start().compareTo(next.get().measure().start()) == 0);
  }

  /** The column at which a text stands. */
  private int column(PrintedText text) {
    double onset = text.start().subtract(shape.notes().measure().start()).doubleValue();
    int column = 0;
    while (column + 1 < shape.columns().size()
        && shape.columns().get(column).column().onset().doubleValue() < onset - 1e-9) {
      column++;
    }
    return column;
  }

  private static double width(PrintedText text) {
    return switch (text.kind()) {
      case DYNAMIC ->
          GlyphRow.dynamic(text.text())
              .map(row -> row.box().width())
              .orElseGet(() -> TextWidth.italic(text.text(), SIZE));
      case TEMPO -> TextWidth.serif(text.text(), SIZE) + NOTE;
      case REHEARSAL, JUMP -> 0;
      default ->
          text.style().bold()
              ? TextWidth.boldSerif(text.text(), SIZE)
              : TextWidth.italic(text.text(), SIZE);
    };
  }
}
