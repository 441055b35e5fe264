package fingering.engraving.drawing;

import fingering.engraving.glyph.Box;
import fingering.engraving.ink.Canvas;
import fingering.engraving.ink.Ink;
import fingering.engraving.ink.Kind;
import fingering.engraving.ink.Style;
import java.util.DoubleSummaryStatistics;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Draws rings around things that are drawn already, as a pencil would. */
final class CircleDrawing {
  private static final double AROUND = 0.35;

  /** The middle of the staff. Fingers below it are those of a second plan, and get no ring. */
  private static final double MIDDLE = 2;

  /** The longest hairpin that gets a ring around all of it. */
  private static final double LONG = 5;

  /** Half an ellipse drawn as one cubic curve: the share of the height that its handles need. */
  private static final double HANDLE = 4.0 / 3;

  /** Times that differ by less are the same. */
  private static final double SAME = 1e-6;

  private final Canvas canvas;

  CircleDrawing(Canvas canvas) {
    this.canvas = canvas;
  }

  void draw(Iterable<Circled> circles) {
    List<Ink> inks = canvas.inks();
    // Most circles of a long part are in other lines.
    DoubleSummaryStatistics times =
        inks.stream().mapToDouble(Ink::time).filter(Double::isFinite).summaryStatistics();
    Set<Box> drawn = new HashSet<>();
    for (Circled circle : circles) {
      if (circle.time() < times.getMin() - SAME || circle.time() > times.getMax() + SAME) {
        continue;
      }
      for (Kind kind : circle.kinds()) {
        Optional<Box> box =
            inks.stream()
                .filter(ink -> ink.kind() == kind && Math.abs(ink.time() - circle.time()) < SAME)
                .filter(ink -> kind != Kind.FINGER || ink.box().top() < MIDDLE)
                .map(Ink::box)
                .reduce(Box::union)
                .map(all -> start(kind, all));
        if (box.isPresent()) {
          if (drawn.add(box.get())) {
            ring(box.get());
          }
          break;
        }
      }
    }
  }

  /** Of a long hairpin only the start is ringed, as a player would. */
  private static Box start(Kind kind, Box box) {
    boolean all = kind != Kind.HAIRPIN || box.width() <= LONG;
    return all ? box : new Box(box.left(), box.top(), box.left() + LONG, box.bottom());
  }

  private void ring(Box box) {
    // An ellipse around a box is wider than the box by about 1.4; a flat one looks like pencil.
    double x = (box.left() + box.right()) / 2;
    double y = (box.top() + box.bottom()) / 2;
    double rx = box.width() / 2 * 1.15 + AROUND + 0.2;
    double ry = box.height() / 2 * 1.15 + AROUND;
    double handle = ry * HANDLE;
    canvas.path(
        Style.RING,
        "M%sC%s %s %sC%s %s %sz"
            .formatted(
                Canvas.point(x - rx, y),
                Canvas.point(x - rx, y - handle),
                Canvas.point(x + rx, y - handle),
                Canvas.point(x + rx, y),
                Canvas.point(x + rx, y + handle),
                Canvas.point(x - rx, y + handle),
                Canvas.point(x - rx, y)));
    canvas.ink(Kind.CIRCLE, new Box(x - rx, y - ry, x + rx, y + ry));
  }
}
