package fingering.engraving.drawing;

import fingering.engraving.drawing.Frame.Spot;
import fingering.engraving.glyph.Box;
import fingering.engraving.glyph.EngravingDefaults;
import fingering.engraving.ink.Canvas;
import fingering.engraving.ink.Kind;
import fingering.engraving.ink.Style;
import fingering.music.print.PrintedPart.OctaveLine;
import fingering.svg.TextWidth;
import java.util.List;

/** Draws the dashed lines of <i>8va</i> over notes, and of <i>8vb</i> under them. */
final class OctaveDrawing {
  private static final double SIZE = 1.9;
  private static final double GAP = 0.4;
  private static final double HOOK = 0.9;
  private static final double DASH = 0.7;
  private static final double STEP = 1.2;

  private final Canvas canvas;
  private final Frame frame;

  OctaveDrawing(Canvas canvas, Frame frame) {
    this.canvas = canvas;
    this.frame = frame;
  }

  void draw(List<OctaveLine> lines) {
    for (OctaveLine line : lines) {
      double begin = line.start().doubleValue();
      double end = line.end().doubleValue();
      double left = Double.POSITIVE_INFINITY;
      double right = 0;
      for (Spot spot : frame.spots()) {
        if (spot.time() >= begin - 1e-9 && spot.time() < end - 1e-9) {
          left = Math.min(left, spot.columnX());
          right = Math.max(right, spot.columnX() + spot.column().right());
        }
      }
      if (right > 0) {
        boolean starts = begin >= frame.from() - 1e-9;
        boolean ends = end <= frame.to() + 1e-9;
        draw(line.octaves(), starts, ends, left - 0.2, ends ? right + 0.2 : frame.right());
      }
    }
  }

  private void draw(int octaves, boolean starts, boolean ends, double left, double right) {
    boolean above = octaves > 0;
    String name =
        switch (octaves) {
          case 1 -> "8va";
          case -1 -> "8vb";
          case 2 -> "15ma";
          default -> octaves > 0 ? "22ma" : "15mb";
        };
    String text = starts ? name : "(" + name + ")";
    double width = TextWidth.italic(text, SIZE);
    double height = SIZE * 0.7;
    double to = Math.min(Math.max(right, left + width + 0.2), frame.shape().width() - 0.1);
    double outer =
        above
            ? canvas.skyline().top(left, to) - GAP - height
            : canvas.skyline().bottom(left, to) + GAP + height;
    double baseline = above ? outer + height : outer;
    double y = above ? outer + 0.1 : outer - 0.1;
    canvas.text(Kind.WORDS, Style.WORDS, text, left, baseline, width, height);
    double from = left + width + 0.4;
    StringBuilder path = new StringBuilder();
    for (double x = from; x < to; x += STEP) {
      path.append('M')
          .append(Canvas.point(x, y))
          .append('H')
          .append(Canvas.n(Math.min(to, x + DASH)));
    }
    if (ends) {
      double inner = above ? y + HOOK : y - HOOK;
      path.append('M').append(Canvas.point(to, y)).append('V').append(Canvas.n(inner));
      canvas.ink(Kind.WORDS, new Box(to - 0.08, Math.min(y, inner), to + 0.08, Math.max(y, inner)));
    }
    double half = EngravingDefaults.EXTENDER_LINE / 2;
    canvas.path(Style.LINE, path.toString());
    if (to > from) {
      canvas.ink(Kind.WORDS, new Box(from, y - half, to, y + half));
    }
  }
}
