package fingering.engraving.drawing;

import fingering.engraving.glyph.Box;
import fingering.engraving.glyph.Glyph;
import fingering.engraving.ink.Canvas;
import fingering.engraving.ink.Kind;
import fingering.engraving.ink.Style;
import fingering.engraving.notes.TextSides;
import fingering.engraving.spacing.MeasureShape;
import fingering.music.print.PrintedPart;
import fingering.music.print.PrintedPart.Ending;
import fingering.music.print.PrintedText;
import fingering.svg.TextWidth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Draws tempo marks, words, rehearsal marks, endings and measure numbers above the staff. */
final class TextDrawing {
  private static final double WORDS = 1.9;
  private static final double TEMPO = 2.0;
  private static final double NUMBER = 1.3;
  private static final double REHEARSAL = 2.0;
  private static final double GAP = 0.5;

  /** White between two pieces of a line. */
  private static final double BETWEEN = 0.7;

  /** The height of capitals, as a share of the size of the letters. */
  private static final double CAPITALS = 0.74;

  private static final double ENDING = 1.5;

  private final Canvas canvas;
  private final Frame frame;
  private final PrintedPart part;

  TextDrawing(Canvas canvas, Frame frame, PrintedPart part) {
    this.canvas = canvas;
    this.frame = frame;
    this.part = part;
  }

  /** The number of the first measure, above the clef. */
  void number() {
    MeasureShape first = frame.shape().measures().get(0);
    String number = first.notes().measure().number();
    if (!first.opens()
        || !first.notes().printed().numbered()
        || number.isEmpty()
        || number.equals("1")
        || number.equals("0")) {
      return;
    }
    double width = TextWidth.serif(number, NUMBER);
    double y = canvas.skyline().top(0, width) - 0.4;
    canvas.text(Kind.NUMBER, Style.NUMBER, number, 0, y, width, NUMBER * 0.72);
  }

  void endings() {
    for (Ending ending : part.endings()) {
      Optional<Double> left = Optional.empty();
      double right = 0;
      boolean starts = false;
      boolean ends = false;
      for (int i = 0; i < frame.shape().measures().size(); i++) {
        MeasureShape measure = frame.shape().measures().get(i);
        int index = measure.notes().measure().index();
        if (index < ending.first() || index > ending.last()) {
          continue;
        }
        if (left.isEmpty()) {
          left = Optional.of(frame.shape().places().get(i).left() + 0.2);
          starts = index == ending.first() && measure.opens();
        }
        right = frame.shape().places().get(i).bar() - 0.3;
        ends = index == ending.last() && measure.closes();
      }
      if (left.isPresent()) {
        ending(ending, left.get(), right, starts, ends && ending.closed());
      }
    }
  }

  private void ending(Ending ending, double left, double right, boolean starts, boolean closed) {
    double y = canvas.skyline().top(left, right) - 2.2;
    String start =
        starts
            ? "M%sV%s".formatted(Canvas.point(left, y + 1.8), Canvas.n(y))
            : "M" + Canvas.point(left, y);
    canvas.path(
        Style.LINE, start + "H" + Canvas.n(right) + (closed ? "V" + Canvas.n(y + 1.8) : ""));
    canvas.ink(Kind.ENDING, new Box(left, y - 0.08, right, y + 0.08));
    if (starts) {
      canvas.ink(Kind.ENDING, new Box(left - 0.08, y, left + 0.08, y + 1.8));
      if (!ending.number().isEmpty()) {
        String text = ending.number() + ".";
        double width = TextWidth.serif(text, ENDING);
        canvas.text(Kind.ENDING, Style.ENDING, text, left + 0.4, y + 1.6, width, ENDING * 0.72);
      }
    }
  }

  void rehearsal() {
    for (PrintedText text : Dynamics.texts(part, frame)) {
      if (text.kind() != PrintedText.Kind.REHEARSAL) {
        continue;
      }
      double time = text.start().doubleValue();
      int m = frame.measure(time);
      boolean atStart =
          Math.abs(frame.shape().measures().get(m).notes().measure().start().doubleValue() - time)
              < 1e-9;
      double width = TextWidth.boldSerif(text.text(), REHEARSAL) + 0.8;
      double left =
          !atStart ? frame.x(time) : m == 0 ? 0.4 : frame.shape().places().get(m).left() - 0.4;
      left = Math.max(0, Math.min(left, frame.shape().width() - width));
      double bottom = canvas.skyline().top(left, left + width) - GAP;
      double top = bottom - REHEARSAL * 1.15;
      canvas.path(
          Style.LINE,
          "M%sH%sV%sH%sz"
              .formatted(
                  Canvas.point(left, top),
                  Canvas.n(left + width),
                  Canvas.n(bottom),
                  Canvas.n(left)));
      canvas.text(
          Kind.WORDS,
          Style.REHEARSAL,
          text.text(),
          left + 0.4,
          bottom - 0.45,
          width - 0.8,
          REHEARSAL * 0.72);
      canvas.ink(Kind.WORDS, new Box(left, top, left + width, bottom));
    }
  }

  /**
   * Words and tempo marks above the staff; those at one place are one line. Words such as
   * <i>pizz.</i> are nearer to their notes than a tempo.
   */
  void words() {
    lines(false);
    lines(true);
  }

  private void lines(boolean tempo) {
    List<PrintedText> all = Dynamics.texts(part, frame);
    Set<Integer> directions =
        all.stream()
            .filter(text -> text.kind() == PrintedText.Kind.TEMPO)
            .map(PrintedText::direction)
            .collect(Collectors.toSet());
    List<PrintedText> line = new ArrayList<>();
    for (PrintedText text : all) {
      if (text.kind() == PrintedText.Kind.REHEARSAL || TextSides.below(text)) {
        continue;
      }
      boolean ofTempo = text.style().bold() || directions.contains(text.direction());
      if (ofTempo != tempo) {
        continue;
      }
      if (!line.isEmpty() && line.get(0).start().compareTo(text.start()) != 0) {
        line(line, tempo);
        line = new ArrayList<>();
      }
      line.add(text);
    }
    if (!line.isEmpty()) {
      line(line, tempo);
    }
  }

  private void line(List<PrintedText> texts, boolean ofTempo) {
    double time = texts.get(0).start().doubleValue();
    canvas.at(time);
    // The words of a tempo stand before its number, if that is a direction of its own.
    Set<Integer> worded =
        texts.stream()
            .filter(text -> text.kind() != PrintedText.Kind.TEMPO)
            .map(PrintedText::direction)
            .collect(Collectors.toSet());
    texts.sort(Comparator.comparing(text -> !worded.contains(text.direction())));
    List<TextPiece> pieces = texts.stream().map(text -> piece(text, ofTempo)).toList();
    double width =
        pieces.stream().mapToDouble(TextPiece::width).sum() + BETWEEN * (pieces.size() - 1);
    double x = ofTempo ? start(time) : frame.x(time);
    x = Math.max(0, Math.min(x, frame.shape().width() - width));
    double baseline = canvas.skyline().top(x, x + width) - GAP - 0.45;
    for (TextPiece piece : pieces) {
      piece.draw(canvas, x, baseline);
      x += piece.width() + BETWEEN;
    }
    canvas.at(Double.NaN);
  }

  /** A tempo at the start of a system stands over the time signature. */
  private double start(double time) {
    int m = frame.measure(time);
    MeasureShape measure = frame.shape().measures().get(m);
    boolean atStart = Math.abs(measure.notes().measure().start().doubleValue() - time) < 1e-9;
    if (atStart && m == 0) {
      return frame.shape().header().stream()
          .filter(sign -> sign.kind() == Kind.METER)
          .mapToDouble(sign -> sign.box().left())
          .min()
          .orElse(frame.x(time));
    }
    return frame.x(time);
  }

  private static TextPiece piece(PrintedText text, boolean ofTempo) {
    return switch (text.kind()) {
      case TEMPO -> MetronomeSign.of(text, TEMPO);
      case JUMP -> new TextPiece.Sign(text.text().equals("coda") ? Glyph.CODA : Glyph.SEGNO);
      default ->
          ofTempo
              ? new TextPiece.Words(
                  Kind.TEMPO,
                  Style.TEMPO,
                  text.text(),
                  TextWidth.boldSerif(text.text(), TEMPO),
                  WORDS * CAPITALS)
              : new TextPiece.Words(
                  Kind.WORDS,
                  Style.WORDS,
                  text.text(),
                  TextWidth.italic(text.text(), WORDS),
                  WORDS * CAPITALS);
    };
  }
}
