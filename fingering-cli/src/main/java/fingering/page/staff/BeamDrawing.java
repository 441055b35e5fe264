package fingering.page.staff;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.Doubles;
import fingering.svg.Svg;
import java.util.List;

/** Draws beams, and sets the lengths of their stems. */
final class BeamDrawing {
  private static final double APART = 6;
  private static final double SHORTEST = 20;
  private static final double STEEPEST = 0.22;
  private static final double STUB = 7;

  private final StringBuilder bars;
  private final StripPiece span;

  /**
   * Creates a drawing of the beams of a piece.
   *
   * @param bars the path to which their outlines are added
   */
  BeamDrawing(StringBuilder bars, StripPiece span) {
    this.bars = bars;
    this.span = span;
  }

  private double x(Stem stem) {
    Column column =
        span.columns.stream().filter(one -> one.stems.contains(stem)).findFirst().orElseThrow();
    return NoteDrawing.stemX(column, stem);
  }

  /** Draws the beams of two or more stems. */
  void draw(List<Stem> beam) {
    int most = beam.stream().mapToInt(stem -> stem.lead().value().flags()).max().orElse(1);
    Slant slant = slant(beam, most);
    for (int level = 1; level <= most; level++) {
      level(beam, slant, level);
    }
  }

  /** Draws the strokes of a tremolo between two stems, without touching the stems. */
  void tremolo(List<Stem> pair) {
    int most = pair.get(0).tremolo().strokes() + pair.get(0).lead().value().flags();
    Slant slant = slant(pair, most);
    double gap = Math.min(6, (slant.xs().get(1) - slant.xs().get(0)) / 5);
    for (int level = 1; level <= most; level++) {
      bar(slant, slant.xs().get(0) + gap, slant.xs().get(1) - gap, level);
    }
  }

  /**
   * The place of a beam: the x of each stem, the y at the first stem, slope, and level distance.
   */
  private record Slant(ImmutableList<Double> xs, double y, double slope, double apart) {
    double y(double x, int level) {
      return y + slope * (x - xs.get(0)) + apart * (level - 1);
    }
  }

  private Slant slant(List<Stem> beam, int most) {
    double[] xs = beam.stream().mapToDouble(this::x).toArray();
    int last = xs.length - 1;
    boolean up = beam.get(0).up;
    double width = xs[last] - xs[0];
    double slope = (beam.get(last).tip - beam.get(0).tip) / Math.max(1, width);
    slope = Math.max(-STEEPEST, Math.min(STEEPEST, slope / 2));
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
    return new Slant(ImmutableList.copyOf(Doubles.asList(xs)), start, slope, up ? APART : -APART);
  }

  private void level(List<Stem> beam, Slant slant, int level) {
    ImmutableList<Double> xs = slant.xs();
    int last = xs.size() - 1;
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
      double x1 = xs.get(from);
      double x2 = xs.get(to);
      if (from == to) {
        boolean back = from == last || (from > 0 && level > 1 && from % 2 == 1);
        x1 = back ? xs.get(from) - STUB : xs.get(from);
        x2 = back ? xs.get(from) : xs.get(from) + STUB;
      }
      bar(slant, x1 - 0.5, x2 + 0.5, level);
      from = to + 1;
    }
  }

  private void bar(Slant slant, double x1, double x2, int level) {
    double y = slant.y(x1, level);
    String along = Svg.point(x2 - x1, slant.y(x2, level) - y);
    String back = Svg.point(x1 - x2, y - slant.y(x2, level));
    bars.append('M').append(Svg.point(x1, y)).append('l').append(along);
    bars.append(slant.apart() > 0 ? "v4l" : "v-4l").append(back).append('z');
  }
}
