package fingering.page.staff;

import fingering.page.svg.Svg;
import java.util.List;

/** Draws beams, and brings the stems below them to their length. */
final class BeamDrawing {
  private static final double THICK = 4;
  private static final double APART = 6;
  private static final double SHORTEST = 20;
  private static final double STEEPEST = 0.22;
  private static final double STUB = 7;

  private final Svg svg;
  private final Span span;

  BeamDrawing(Svg svg, Span span) {
    this.svg = svg;
    this.span = span;
  }

  private double x(Stem stem) {
    Column column =
        span.columns.stream().filter(one -> one.stems.contains(stem)).findFirst().orElseThrow();
    return NoteDrawing.stemX(column, stem);
  }

  /** Draws the beams of some stems, two or more. */
  void draw(List<Stem> beam) {
    double[] xs = beam.stream().mapToDouble(this::x).toArray();
    int last = xs.length - 1;
    boolean up = beam.get(0).up;
    double way = xs[last] - xs[0];
    double slope = (beam.get(last).tip - beam.get(0).tip) / Math.max(1, way);
    slope = Math.max(-STEEPEST, Math.min(STEEPEST, slope / 2));
    int most = beam.stream().mapToInt(stem -> stem.lead().value().flags()).max().orElse(1);
    double least = SHORTEST + APART * Math.max(0, most - 1);
    double start = up ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
    for (int i = 0; i <= last; i++) {
      Stem stem = beam.get(i);
      double wanted = up ? Stem.y(stem.highest()) - least : Stem.y(stem.lowest()) + least;
      double atFirst = wanted - slope * (xs[i] - xs[0]);
      start = up ? Math.min(start, atFirst) : Math.max(start, atFirst);
    }
    for (int i = 0; i <= last; i++) {
      beam.get(i).tip = start + slope * (xs[i] - xs[0]);
    }
    for (int level = 1; level <= most; level++) {
      level(beam, xs, slope, level, up ? APART : -APART);
    }
  }

  private void level(List<Stem> beam, double[] xs, double slope, int level, double apart) {
    int last = xs.length - 1;
    int from = 0;
    while (from <= last) {
      if (beam.get(from).lead().value().flags() < level) {
        from++;
        continue;
      }
      int to = from;
      while (to < last && beam.get(to + 1).lead().value().flags() >= level) {
        to++;
      }
      double x1 = xs[from];
      double x2 = xs[to];
      if (from == to) {
        boolean back = from == last || (from > 0 && level > 1 && from % 2 == 1);
        x1 = back ? xs[from] - STUB : xs[from];
        x2 = back ? xs[from] : xs[from] + STUB;
      }
      double offset = apart * (level - 1);
      double y1 = beam.get(from).tip + slope * (x1 - xs[from]) + offset;
      double y2 = beam.get(from).tip + slope * (x2 - xs[from]) + offset;
      double thick = apart > 0 ? THICK : -THICK;
      svg.path(
          "ink",
          "M%sL%sv%sL%sZ"
              .formatted(
                  Svg.point(x1 - 0.5, y1),
                  Svg.point(x2 + 0.5, y2),
                  Svg.number(thick),
                  Svg.point(x1 - 0.5, y1 + thick)));
      from = to + 1;
    }
  }
}
