package fingering.engraving.drawing;

import fingering.engraving.drawing.Frame.Spot;
import fingering.engraving.glyph.Box;
import fingering.engraving.glyph.EngravingDefaults;
import fingering.engraving.glyph.GlyphRow;
import fingering.engraving.ink.Canvas;
import fingering.engraving.ink.Kind;
import fingering.engraving.ink.Style;
import fingering.engraving.notes.Chord;
import fingering.engraving.notes.Tuplet;
import fingering.engraving.spacing.MeasureShape;
import fingering.music.print.PrintedPart.Tuplet.Numbers;
import fingering.music.print.Side;
import java.util.List;

/** Draws the numbers of tuplets, and brackets where no beam joins the notes. */
final class TupletDrawing {
  private static final double GAP = 0.35;
  private static final double HOOK = 0.7;

  private final Canvas canvas;

  private final Frame frame;

  TupletDrawing(Canvas canvas, Frame frame) {
    this.canvas = canvas;
    this.frame = frame;
  }

  void draw() {
    int last = -1;
    for (MeasureShape measure : frame.shape().measures()) {
      // A divided measure comes twice.
      if (measure.notes().measure().index() == last) {
        continue;
      }
      last = measure.notes().measure().index();
      for (Tuplet tuplet : measure.notes().tuplets()) {
        List<Spot> spots =
            tuplet.chords().stream().flatMap(chord -> frame.spot(chord).stream()).toList();
        if (!spots.isEmpty()) {
          draw(tuplet, spots);
        }
      }
    }
  }

  private void draw(Tuplet tuplet, List<Spot> spots) {
    boolean above = above(tuplet);
    double left = spots.get(0).columnX() - 0.1;
    Spot end = spots.get(spots.size() - 1);
    double right = end.columnX() + 1.3;
    double middle = (left + right) / 2;
    if (!tuplet.bracketed()) {
      middle = (frame.stem(spots.get(0)) + frame.stem(end)) / 2;
    }
    if (tuplet.printed().shown() == Numbers.NONE && !tuplet.bracketed()) {
      return;
    }
    GlyphRow number = GlyphRow.italic(tuplet.printed().actual());
    double width = number.box().width();
    double from = !tuplet.bracketed() ? middle - width / 2 - 0.2 : left;
    double to = !tuplet.bracketed() ? middle + width / 2 + 0.2 : right;
    double height = number.box().height();
    double edge =
        above
            ? canvas.skyline().top(from, to) - GAP
            : canvas.skyline().bottom(from, to) + GAP + height;
    double baseline = edge;
    canvas.row(Kind.TUPLET, number, middle - width / 2, baseline, 1);
    if (tuplet.bracketed()) {
      bracket(left, right, middle, width, baseline - height / 2, above);
    }
  }

  /** On the printed side, or that of the stems. */
  private static boolean above(Tuplet tuplet) {
    if (tuplet.printed().side() != Side.AUTO) {
      return tuplet.printed().side() == Side.ABOVE;
    }
    long up = tuplet.chords().stream().filter(chord -> !chord.rest()).filter(Chord::up).count();
    long notes = tuplet.chords().stream().filter(chord -> !chord.rest()).count();
    return notes == 0 || up * 2 >= notes;
  }

  private void bracket(
      double left, double right, double middle, double width, double y, boolean above) {
    double hook = above ? y + HOOK : y - HOOK;
    double gap = width / 2 + 0.3;
    double thick = EngravingDefaults.TUPLET_BRACKET;
    canvas.path(
        Style.LINE,
        "M%sV%sH%sM%sH%sV%s"
            .formatted(
                Canvas.point(left, hook),
                Canvas.n(y),
                Canvas.n(middle - gap),
                Canvas.point(middle + gap, y),
                Canvas.n(right),
                Canvas.n(hook)));
    canvas.ink(Kind.TUPLET, new Box(left, y - thick / 2, middle - gap, y + thick / 2));
    canvas.ink(Kind.TUPLET, new Box(middle + gap, y - thick / 2, right, y + thick / 2));
  }
}
