package fingering.engraving.drawing;

import com.google.common.collect.ImmutableList;
import fingering.engraving.drawing.Frame.Spot;
import fingering.engraving.glyph.Box;
import fingering.engraving.glyph.Glyph;
import fingering.engraving.ink.Canvas;
import fingering.engraving.ink.Kind;
import fingering.engraving.notes.Chord;
import fingering.engraving.notes.Chord.Layer;
import fingering.music.print.PrintedNote.Sign;

/** Draws the signs at notes: articulations next to the heads, bowings and ornaments above. */
final class SignDrawing {
  private static final double GAP = 0.35;

  /** Signs above everything else, the nearest first. */
  private static final ImmutableList<Sign> OVER =
      ImmutableList.of(
          Sign.HARMONIC,
          Sign.LEFT_PLUCKED,
          Sign.DOWN_BOW,
          Sign.UP_BOW,
          Sign.TRILL,
          Sign.FERMATA);

  private final Canvas canvas;
  private final Frame frame;

  SignDrawing(Canvas canvas, Frame frame) {
    this.canvas = canvas;
    this.frame = frame;
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
      for (Sign sign : new Sign[] {Sign.STACCATO, Sign.TENUTO}) {
        if (chord.has(sign)) {
          within(chord, glyph(sign, above), x, above, atHeads);
        }
      }
      for (Sign sign : new Sign[] {Sign.ACCENT, Sign.MARCATO}) {
        if (chord.has(sign)) {
          outside(glyph(sign, above), x, above, Kind.ARTICULATION);
        }
      }
    }
  }

  private static Glyph glyph(Sign sign, boolean above) {
    return switch (sign) {
      case STACCATO -> Glyph.STACCATO;
      case TENUTO -> Glyph.TENUTO;
      case ACCENT -> Glyph.ACCENT;
      case MARCATO -> above ? Glyph.MARCATO_ABOVE : Glyph.MARCATO_BELOW;
      case HARMONIC -> Glyph.HARMONIC;
      case LEFT_PLUCKED -> Glyph.PLUCKED_LEFT;
      case DOWN_BOW -> Glyph.DOWN_BOW;
      case UP_BOW -> Glyph.UP_BOW;
      case TRILL -> Glyph.TRILL;
      case FERMATA -> Glyph.FERMATA_ABOVE;
    };
  }

  /** A sign that may stand within the staff: in the middle of a space, never on a line. */
  private void within(Chord chord, Glyph glyph, double x, boolean above, boolean atHeads) {
    Box shape = glyph.box();
    double left = x - shape.width() / 2 - shape.left();
    double side = above ? -1 : 1;
    double middle = (shape.top() + shape.bottom()) / 2;
    if (atHeads) {
      int step = above ? chord.highest() + 2 : chord.lowest() - 2;
      if (step >= 0 && step <= 8) {
        int free = Math.floorMod(step, 2) == 0 ? step + (above ? 1 : -1) : step;
        double y = Chord.y(free);
        double reach = shape.height() / 2 + 0.1;
        boolean clear =
            above
                ? canvas.skyline().top(x - 0.2, x + 0.2) >= Math.min(0, y + reach)
                : canvas.skyline().bottom(x - 0.2, x + 0.2) <= Math.max(4, y - reach);
        boolean again = taken(x, y);
        if (clear && !again && free >= 0 && free <= 8) {
          canvas.glyph(Kind.ARTICULATION, glyph, left, y - middle);
          return;
        }
      }
    }
    double edge = edge(left + shape.left(), left + shape.right(), above);
    // Outside the staff the sign keeps a little white to the head or line.
    canvas.glyph(
        Kind.ARTICULATION,
        glyph,
        left,
        edge + side * GAP - (above ? shape.bottom() : shape.top()));
  }

  /** Whether another articulation is there already. */
  private boolean taken(double x, double y) {
    return canvas.inks().stream()
        .filter(ink -> ink.kind() == Kind.ARTICULATION)
        .anyMatch(
            ink ->
                ink.box().left() <= x
                    && ink.box().right() >= x
                    && ink.box().top() - 0.2 <= y
                    && ink.box().bottom() + 0.2 >= y);
  }

  private double edge(double left, double right, boolean above) {
    return above
        ? canvas.skyline().top(left, right)
        : canvas.skyline().bottom(left, right);
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
        boolean below = chord.layer() == Layer.LOWER && sign == Sign.FERMATA;
        Glyph glyph = below ? Glyph.FERMATA_BELOW : glyph(sign, true);
        outside(glyph, spot.middle(), !below, Kind.ORNAMENT);
      }
    }
  }
}
