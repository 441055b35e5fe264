package fingering.page.staff;

import fingering.music.NoteAddress;
import fingering.svg.Svg;
import java.util.List;
import java.util.Map;

/** Draws slurs and ties. Those that cross from one piece to the next are level at the edge. */
final class CurveDrawing {
  private static final double EDGE = 2;

  private final List<Svg> pieces;
  private final List<StripPiece> spans;
  private final Map<NoteAddress, DrawnNote> spots;
  private final Extents extents;

  CurveDrawing(
      List<Svg> pieces,
      List<StripPiece> spans,
      Map<NoteAddress, DrawnNote> spots,
      Extents extents) {
    this.pieces = pieces;
    this.spans = spans;
    this.spots = spots;
    this.extents = extents;
  }

  /** Draws a tie from one note to the next. */
  void tie(DrawnNote from, DrawnNote to) {
    boolean over = !from.up();
    double lift = over ? -1 : 1;
    double y = from.y() + 5 * lift;
    if (from.piece() == to.piece()) {
      arc(pieces.get(from.piece()), from.x() + 3, to.x() - 3, y, y, y + 6 * lift, 0.25);
      return;
    }
    double edge = spans.get(from.piece()).width;
    double bend = y + 5 * lift;
    pieces
        .get(from.piece())
        .path(
            "curve",
            "M%sQ%s %s"
                .formatted(
                    Svg.point(from.x() + 4, y),
                    Svg.point(from.x() + 9, bend),
                    Svg.point(edge, bend)));
    pieces
        .get(to.piece())
        .path(
            "curve",
            "M%sH%sQ%s %s"
                .formatted(
                    Svg.point(0, bend),
                    Svg.number(Math.max(0, to.x() - 12)),
                    Svg.point(to.x() - 7, bend),
                    Svg.point(to.x() - 4, y)));
    extents.add(y, bend);
  }

  /**
   * Draws a slur.
   *
   * @param from the first note, or the first of the passage if the slur begins before it
   * @param to the last note, or the last of the passage if the slur ends after it
   * @param begins whether the slur begins in the passage
   * @param ends whether the slur ends in the passage
   */
  void slur(DrawnNote from, DrawnNote to, boolean begins, boolean ends) {
    boolean over = over(from, to);
    double lift = over ? -1 : 1;
    double reach = over ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
    for (DrawnNote spot : spots.values()) {
      if (within(spot, from, to)) {
        reach = over ? Math.min(reach, spot.top()) : Math.max(reach, spot.bottom());
      }
    }
    double start = (over ? from.top() : from.bottom()) + 4 * lift;
    double stop = (over ? to.top() : to.bottom()) + 4 * lift;
    double level = reach + 10 * lift;
    extents.add(level, level + lift);
    if (begins && ends && from.piece() == to.piece()) {
      // A cubic curve reaches three quarters of the distance to its control points.
      double middle = (start + stop) / 2;
      double bend = middle + (level - middle) * 1.2;
      arc(pieces.get(from.piece()), from.x(), to.x(), start, stop, bend, 0.2);
      return;
    }
    for (int piece = from.piece(); piece <= to.piece(); piece++) {
      boolean first = begins && piece == from.piece();
      boolean last = ends && piece == to.piece();
      double width = spans.get(piece).width;
      StringBuilder path = new StringBuilder();
      double rounded = 14;
      if (first) {
        path.append("M").append(Svg.point(from.x(), start));
        path.append("Q").append(Svg.point(from.x() + 3, level)).append(' ');
        path.append(Svg.point(Math.min(width, from.x() + rounded), level));
      } else {
        path.append("M").append(Svg.point(piece == from.piece() ? EDGE : 0, level));
      }
      if (last) {
        path.append("H").append(Svg.number(Math.max(0, to.x() - rounded)));
        path.append("Q").append(Svg.point(to.x() - 3, level)).append(' ');
        path.append(Svg.point(to.x(), stop));
      } else {
        path.append("H").append(Svg.number(width));
      }
      pieces.get(piece).path("curve", path.toString());
    }
  }

  /**
   * Draws a cubic curve.
   *
   * @param bend the y of both control points
   * @param share the distance of a control point from its end, as a share of the width
   */
  private static void arc(
      Svg svg, double x1, double x2, double y1, double y2, double bend, double share) {
    svg.path(
        "curve",
        "M%sC%s %s %s"
            .formatted(
                Svg.point(x1, y1),
                Svg.point(x1 + (x2 - x1) * share, bend),
                Svg.point(x2 - (x2 - x1) * share, bend),
                Svg.point(x2, y2)));
  }

  /** Whether a slur passes above its notes. */
  static boolean over(DrawnNote from, DrawnNote to) {
    return !from.up() || !to.up();
  }

  /** Whether a note lies between two others, or is one of them. */
  static boolean within(DrawnNote spot, DrawnNote from, DrawnNote to) {
    boolean after =
        spot.piece() > from.piece() || (spot.piece() == from.piece() && spot.x() >= from.x());
    boolean before =
        spot.piece() < to.piece() || (spot.piece() == to.piece() && spot.x() <= to.x());
    return after && before;
  }
}
