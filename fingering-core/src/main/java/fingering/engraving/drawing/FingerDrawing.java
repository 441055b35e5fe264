package fingering.engraving.drawing;

import fingering.engraving.drawing.Frame.Spot;
import fingering.engraving.drawing.Lane.Mark;
import fingering.engraving.glyph.Box;
import fingering.engraving.glyph.Glyph;
import fingering.engraving.ink.Canvas;
import fingering.engraving.ink.Kind;
import fingering.engraving.ink.Style;
import fingering.svg.TextWidth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Draws fingers, string numerals, and the brackets of positions. */
final class FingerDrawing {
  private static final double GAP = 0.3;
  private static final double NUMERAL_SCALE = 0.85;
  private static final double TEXT = 1.5;
  private static final double LABEL = 1.45;
  private static final double HOOK = 0.7;

  private final Canvas canvas;
  private final Frame frame;

  FingerDrawing(Canvas canvas, Frame frame) {
    this.canvas = canvas;
    this.frame = frame;
  }

  /** Draws the fingers of a lane at the notes, above or below all that is drawn so far. */
  void fingers(Lane lane, boolean above, Style style) {
    canvas.raw("<g class=\"" + style.css() + "\">");
    for (Spot spot : chords()) {
      List<Mark> marks = marks(lane, spot);
      canvas.at(spot.time());
      // The finger of the lowest note is nearest to the staff above it, and farthest below.
      for (int i = 0; i < marks.size(); i++) {
        finger(marks.get(above ? i : marks.size() - 1 - i).finger(), x(spot), above);
      }
    }
    // After all fingers, so that a numeral does not push the next finger away.
    for (Spot spot : chords()) {
      List<String> strings =
          marks(lane, spot).stream().filter(Mark::showString).map(Mark::string).distinct().toList();
      if (!strings.isEmpty()) {
        canvas.at(spot.time());
        numeral(String.join("/", strings), x(spot), above);
      }
    }
    canvas.at(Double.NaN);
    canvas.raw("</g>");
  }

  /** The first note of each chord. */
  private List<Spot> chords() {
    List<Spot> chords = new ArrayList<>();
    for (Spot spot : frame.spots()) {
      if (spot.chord().address().equals(spot.note().address())) {
        chords.add(spot);
      }
    }
    return chords;
  }

  private static double x(Spot spot) {
    return spot.columnX() + spot.column().middle(spot.chord());
  }

  private static List<Mark> marks(Lane lane, Spot spot) {
    List<Mark> marks = new ArrayList<>();
    spot.chord()
        .notes()
        .forEach(
            note -> Optional.ofNullable(lane.marks().get(note.address())).ifPresent(marks::add));
    return marks;
  }

  private static Optional<Glyph> glyph(char sign) {
    if (sign >= '0' && sign <= '5') {
      return Optional.of(Glyph.finger(sign - '0'));
    }
    return switch (sign) {
      case 'T', 't', '+' -> Optional.of(Glyph.THUMB);
      case '°' -> Optional.of(Glyph.HARMONIC);
      default -> Optional.empty();
    };
  }

  private static double width(char sign) {
    return glyph(sign).map(Glyph::advance).orElseGet(() -> TextWidth.of("" + sign, TEXT));
  }

  private void finger(String finger, double x, boolean above) {
    double width = finger.chars().mapToDouble(c -> width((char) c)).sum();
    double height = Glyph.FINGER_1.box().height();
    double at = baseline(x - width / 2, x + width / 2, height, above);
    double left = x - width / 2;
    for (int i = 0; i < finger.length(); i++) {
      char sign = finger.charAt(i);
      Optional<Glyph> glyph = glyph(sign);
      if (glyph.isPresent()) {
        double raise = glyph.get() == Glyph.HARMONIC ? height - glyph.get().box().height() : 0;
        double bottom = glyph.get().box().bottom();
        canvas.glyph(
            Kind.FINGER, glyph.get(), left - glyph.get().box().left(), at - bottom - raise);
      } else {
        canvas.text(Kind.FINGER, Style.MARK, "" + sign, left, at, width(sign), height);
      }
      left += width(sign);
    }
  }

  /** The baseline of something so high that clears everything. */
  private double baseline(double left, double right, double height, boolean above) {
    double reach = 0.2;
    return above
        ? canvas.skyline().top(left - reach, right + reach) - GAP
        : canvas.skyline().bottom(left - reach, right + reach) + GAP + height;
  }

  private void numeral(String numeral, double x, boolean above) {
    double height = Glyph.NUMERAL_I.box().height() * NUMERAL_SCALE;
    double width = 0;
    for (int i = 0; i < numeral.length(); i++) {
      char sign = numeral.charAt(i);
      width += numeralWidth(sign);
    }
    double at = baseline(x - width / 2, x + width / 2, height, above);
    double left = x - width / 2;
    for (int i = 0; i < numeral.length(); i++) {
      char sign = numeral.charAt(i);
      if (sign == '/') {
        canvas.path(
            Style.LINE,
            "M%sL%s"
                .formatted(Canvas.point(left + 0.05, at), Canvas.point(left + 0.45, at - height)));
        canvas.ink(Kind.STRING, new Box(left, at - height, left + 0.5, at));
      } else {
        canvas.glyph(
            Kind.STRING, sign == 'V' ? Glyph.NUMERAL_V : Glyph.NUMERAL_I, left, at, NUMERAL_SCALE);
      }
      left += numeralWidth(sign);
    }
  }

  private static double numeralWidth(char sign) {
    return sign == '/'
        ? 0.6
        : (sign == 'V' ? Glyph.NUMERAL_V : Glyph.NUMERAL_I).advance() * NUMERAL_SCALE;
  }

  /** Draws a bracket over or under every stay of the hand in a position other than the first. */
  void positions(Lane lane, boolean above) {
    List<Spot> marked = new ArrayList<>();
    for (Spot spot : frame.spots()) {
      if (lane.marks().containsKey(spot.note().address())) {
        marked.add(spot);
      }
    }
    marked.sort(Comparator.comparingDouble(Spot::columnX));
    for (int i = 0; i < marked.size(); ) {
      Mark mark = mark(lane, marked.get(i));
      int end = i;
      while (end + 1 < marked.size()
          && mark(lane, marked.get(end + 1)).position().equals(mark.position())) {
        end++;
      }
      if (!mark.first()) {
        bracket(mark.position(), marked.get(i), marked.get(end), above);
      }
      i = end + 1;
    }
  }

  private static Mark mark(Lane lane, Spot spot) {
    return Objects.requireNonNull(lane.marks().get(spot.note().address()));
  }

  private void bracket(String position, Spot first, Spot last, boolean above) {
    double left = first.columnX() - 0.3;
    double width = TextWidth.boldSerif(position, LABEL);
    double right = Math.max(last.columnX() + 1.5, left + width + 0.4);
    right = Math.min(right, frame.shape().width());
    double height = LABEL * 0.72;
    double edge =
        above
            ? canvas.skyline().top(left, right) - GAP - 0.1
            : canvas.skyline().bottom(left, right) + GAP + height;
    canvas.text(Kind.POSITION, Style.POSITION, position, left, edge, width, height);
    double y = edge - LABEL * 0.35;
    double hook = above ? y + HOOK : y - HOOK;
    double from = left + width + 0.25;
    if (right - from > 0.5) {
      canvas.path(
          Style.LINE,
          "M%sH%sV%s".formatted(Canvas.point(from, y), Canvas.n(right), Canvas.n(hook)));
      canvas.ink(Kind.POSITION, new Box(from, y - 0.08, right, y + 0.08));
      canvas.ink(
          Kind.POSITION, new Box(right - 0.08, Math.min(y, hook), right + 0.08, Math.max(y, hook)));
    }
  }
}
