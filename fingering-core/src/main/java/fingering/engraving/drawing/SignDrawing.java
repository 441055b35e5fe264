package fingering.engraving.drawing;

import com.google.common.collect.ImmutableList;
import fingering.engraving.drawing.Frame.Spot;
import fingering.engraving.glyph.Box;
import fingering.engraving.glyph.Glyph;
import fingering.engraving.ink.Canvas;
import fingering.engraving.ink.Kind;
import fingering.engraving.notes.Chord;
import fingering.engraving.notes.Chord.Layer;
import fingering.engraving.spacing.MeasureShape;
import fingering.music.print.PrintedNote.Sign;
import fingering.music.print.PrintedPart.NoteLine;
import java.util.OptionalDouble;

/** Draws the signs at notes: articulations next to the heads, bowings and ornaments above. */
final class SignDrawing {
  private static final double GAP = 0.35;

  /** Signs above everything else, the nearest first. */
  private static final ImmutableList<Sign> OVER =
      ImmutableList.of(
          Sign.HARMONIC,
          Sign.LEFT_PLUCKED,
          Sign.SNAP_PIZZICATO,
          Sign.DOWN_BOW,
          Sign.UP_BOW,
          Sign.TRILL,
          Sign.TURN,
          Sign.INVERTED_TURN,
          Sign.MORDENT,
          Sign.SHORT_TRILL,
          Sign.FERMATA,
          Sign.INVERTED_FERMATA);

  private final Canvas canvas;
  private final Frame frame;
  private final ImmutableList<NoteLine> lines;

  SignDrawing(Canvas canvas, Frame frame, ImmutableList<NoteLine> lines) {
    this.canvas = canvas;
    this.frame = frame;
    this.lines = lines;
  }

  /** Draws dots, lines and accents at the heads, inside slurs. */
  void near() {
    for (Spot spot : frame.spots()) {
      Chord chord = spot.chord();
      if (chord.rest() || !chord.address().equals(spot.note().address())) {
        continue;
      }
      canvas.at(spot.time());
      boolean above = chord.layer() == Layer.ALONE ? !chord.up() : chord.layer() == Layer.UPPER;
      // The side of the heads, unless another voice is there.
      boolean atHeads = above != chord.up();
      double x = atHeads ? spot.column().middle(chord) + spot.columnX() : frame.stem(spot);
      for (Sign sign : new Sign[] {Sign.STACCATO, Sign.STACCATISSIMO, Sign.TENUTO}) {
        if (chord.has(sign)) {
          within(chord, glyph(sign, above), x, above, atHeads);
        }
      }
      for (Sign sign : new Sign[] {Sign.ACCENT, Sign.SOFT_ACCENT, Sign.MARCATO}) {
        if (chord.has(sign)) {
          outside(glyph(sign, above), x, above, Kind.ARTICULATION);
        }
      }
    }
  }

  /** The x at which the wavy line after a trill ends; empty if there is none. */
  private OptionalDouble waveEnd(Spot spot) {
    for (NoteLine line : lines) {
      if (line.kind() == NoteLine.Kind.TRILL && line.from().equals(spot.note().address())) {
        return OptionalDouble.of(
            frame
                .spot(line.to())
                .filter(last -> last.time() > spot.time())
                .map(last -> last.right() + 0.5)
                .orElse(frame.end(spot) - 0.6));
      }
    }
    return OptionalDouble.empty();
  }

  /** Draws a trill, with its wavy line if there is room for one. */
  private void trill(Spot spot) {
    OptionalDouble end = waveEnd(spot);
    Box shape = Glyph.TRILL.box();
    double left = spot.middle() - shape.width() / 2;
    double right = Math.max(left + shape.width(), end.orElse(0));
    double baseline = edge(left - 0.1, right + 0.1, true) - GAP;
    Box trill =
        canvas.glyph(Kind.ORNAMENT, Glyph.TRILL, left - shape.left(), baseline - shape.bottom());
    double y = (trill.top() + trill.bottom()) / 2;
    for (double x = trill.right() + 0.2; x + Glyph.WAVE.width() <= end.orElse(0); x += 1) {
      canvas.glyph(Kind.ORNAMENT, Glyph.WAVE, x, y);
    }
  }

  /** Draws breath marks and caesuras after their notes, and fermatas over bar lines. */
  void after() {
    for (Spot spot : frame.spots()) {
      for (Sign sign : new Sign[] {Sign.BREATH, Sign.CAESURA}) {
        if (spot.note().has(sign)) {
          Glyph glyph = glyph(sign, true);
          double x = Math.max(spot.right() + 0.4, frame.end(spot) - 1.2);
          outside(glyph, x + glyph.width() / 2, true, Kind.ORNAMENT);
        }
      }
    }
    for (int i = 0; i < frame.system().measures().size(); i++) {
      MeasureShape measure = frame.system().measures().get(i);
      if (measure.closes() && measure.notes().printed().fermataAtEnd()) {
        double x = frame.system().places().get(i).bar() - 0.1;
        double most = frame.system().width() - Glyph.FERMATA_ABOVE.width() / 2;
        outside(Glyph.FERMATA_ABOVE, Math.min(x, most), true, Kind.ORNAMENT);
      }
    }
  }

  private static Glyph glyph(Sign sign, boolean above) {
    return switch (sign) {
      case STACCATO -> Glyph.STACCATO;
      case STACCATISSIMO -> above ? Glyph.STACCATISSIMO_ABOVE : Glyph.STACCATISSIMO_BELOW;
      case TENUTO -> Glyph.TENUTO;
      case ACCENT, SOFT_ACCENT -> Glyph.ACCENT;
      case MARCATO -> above ? Glyph.MARCATO_ABOVE : Glyph.MARCATO_BELOW;
      case HARMONIC -> Glyph.HARMONIC;
      case LEFT_PLUCKED -> Glyph.PLUCKED_LEFT;
      case SNAP_PIZZICATO -> Glyph.SNAP;
      case DOWN_BOW -> Glyph.DOWN_BOW;
      case UP_BOW -> Glyph.UP_BOW;
      case TRILL -> Glyph.TRILL;
      case TURN -> Glyph.TURN;
      case INVERTED_TURN -> Glyph.TURN_INVERTED;
      case MORDENT -> Glyph.MORDENT;
      case SHORT_TRILL -> Glyph.SHORT_TRILL;
      case FERMATA -> Glyph.FERMATA_ABOVE;
      case INVERTED_FERMATA -> Glyph.FERMATA_BELOW;
      case BREATH -> Glyph.BREATH;
      case CAESURA -> Glyph.CAESURA;
      case ARPEGGIO, ARPEGGIO_UP, ARPEGGIO_DOWN, NO_ARPEGGIO -> Glyph.ARPEGGIO;
    };
  }

  /** A sign that may stand within the staff: in the middle of a space, never on a line. */
  private void within(Chord chord, Glyph glyph, double x, boolean above, boolean atHeads) {
    Box shape = glyph.box();
    double left = x - shape.width() / 2 - shape.left();
    double side = above ? -1 : 1;
    double middle = (shape.top() + shape.bottom()) / 2;
    if (atHeads) {
      int out = above ? 1 : -1;
      int step = above ? chord.highest() + 2 : chord.lowest() - 2;
      step += Math.floorMod(step, 2) == 0 ? out : 0;
      double half = Math.max(0.3, shape.height() / 2 + 0.1);
      for (; step >= 0 && step <= 8; step += 2 * out) {
        Box box =
            new Box(
                x - shape.width() / 2,
                Chord.y(step) - half,
                x + shape.width() / 2,
                Chord.y(step) + half);
        if (clear(box, above)) {
          canvas.glyph(Kind.ARTICULATION, glyph, left, Chord.y(step) - middle);
          return;
        }
      }
    }
    double edge = edge(left + shape.left(), left + shape.right(), above);
    // Outside the staff the sign keeps a little white to the head or line.
    canvas.glyph(
        Kind.ARTICULATION, glyph, left, edge + side * GAP - (above ? shape.bottom() : shape.top()));
  }

  /** Whether nothing but lines of the staff is at a place, or beyond it. */
  private boolean clear(Box box, boolean above) {
    return above
        ? canvas.notes().top(box.left(), box.right()) >= box.bottom()
        : canvas.notes().bottom(box.left(), box.right()) <= box.top();
  }

  private double edge(double left, double right, boolean above) {
    return above ? canvas.skyline().top(left, right) : canvas.skyline().bottom(left, right);
  }

  private void outside(Glyph glyph, double x, boolean above, Kind kind) {
    Box shape = glyph.box();
    double left = x - shape.width() / 2 - shape.left();
    double edge = edge(left + shape.left() - 0.1, left + shape.right() + 0.1, above);
    double y = above ? edge - GAP - shape.bottom() : edge + GAP - shape.top();
    canvas.glyph(kind, glyph, left, y);
  }

  /** Draws bowings, ornaments and fermatas above what is drawn so far. */
  void over() {
    for (Spot spot : frame.spots()) {
      Chord chord = spot.chord();
      if (!chord.address().equals(spot.note().address())) {
        continue;
      }
      canvas.at(spot.time());
      for (Sign sign : OVER) {
        if (!chord.has(sign)) {
          continue;
        }
        boolean below =
            sign == Sign.INVERTED_FERMATA || (chord.layer() == Layer.LOWER && sign == Sign.FERMATA);
        Glyph glyph = below ? Glyph.FERMATA_BELOW : glyph(sign, true);
        if (sign == Sign.TRILL) {
          trill(spot);
        } else {
          outside(glyph, spot.middle(), !below, Kind.ORNAMENT);
        }
      }
    }
  }
}
