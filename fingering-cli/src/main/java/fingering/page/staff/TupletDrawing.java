package fingering.page.staff;

import fingering.music.print.PrintedNote;
import fingering.page.svg.Svg;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/** Draws the numbers and brackets of tuplets. */
final class TupletDrawing {
  private static final double HEAD = 4;

  private final Svg svg;
  private final Extents extents;
  private final StripPiece span;
  private final Function<PrintedNote, Optional<Boolean>> curveOver;

  /**
   * Creates a drawing of the tuplets of a piece.
   *
   * @param curveOver whether a slur passes above a note or below it; empty if there is none
   */
  TupletDrawing(
      Svg svg,
      Extents extents,
      StripPiece span,
      Function<PrintedNote, Optional<Boolean>> curveOver) {
    this.svg = svg;
    this.extents = extents;
    this.span = span;
    this.curveOver = curveOver;
  }

  void draw() {
    for (List<Stem> voice : span.source.voices.values()) {
      List<Stem> open = new ArrayList<>();
      for (Stem stem : voice) {
        if (stem.grace()) {
          continue;
        }
        if (!open.isEmpty() && open.get(0).lead().tuplet() != stem.lead().tuplet()) {
          close(open);
        }
        if (stem.lead().tuplet() > 0) {
          open.add(stem);
          if (even(open) && full(open)) {
            close(open);
          }
        }
      }
      close(open);
    }
  }

  private void close(List<Stem> open) {
    if (!open.isEmpty() && even(open)) {
      figure(List.copyOf(open), open.get(0).lead().tuplet());
    }
    open.clear();
  }

  private static BigFraction sum(List<Stem> group) {
    return group.stream()
        .map(stem -> stem.lead().length())
        .reduce(BigFraction.ZERO, BigFraction::add);
  }

  /** Whether the total length of a group can be written without a tuplet. */
  private static boolean even(List<Stem> group) {
    return Long.bitCount(sum(group).getDenominator().longValue()) == 1;
  }

  /**
   * Whether a group is as long as the tuplet number times its shortest note: six in a sextuplet.
   */
  private static boolean full(List<Stem> group) {
    BigFraction shortest =
        group.stream().map(stem -> stem.lead().length()).min(BigFraction::compareTo).orElseThrow();
    return sum(group).divide(shortest).compareTo(BigFraction.of(group.get(0).lead().tuplet())) >= 0;
  }

  private void figure(List<Stem> group, int tuplet) {
    List<Column> columns =
        span.columns.stream()
            .filter(column -> column.stems.stream().anyMatch(group::contains))
            .toList();
    // The number of a tuplet that was split is drawn in its first piece.
    if (columns.isEmpty() || !columns.get(0).stems.contains(group.get(0))) {
      return;
    }
    double x1 = columns.get(0).x;
    double x2 = columns.get(columns.size() - 1).x;
    boolean up = over(group);
    double y = up ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
    for (Stem stem : group) {
      double own =
          stem.rest()
              ? (up ? 0 : Extents.STAFF)
              : stem.stemmed() && stem.up == up
                  ? stem.tip
                  : Stem.y(up ? stem.highest() : stem.lowest()) + (up ? -HEAD : HEAD);
      y = up ? Math.min(y, own) : Math.max(y, own);
    }
    double baseline = up ? Math.min(y, 4) - 4 : Math.max(y, 28) + 11;
    double middle = (x1 + x2) / 2;
    svg.text("tuplet", middle, baseline, Integer.toString(tuplet));
    extents.add(baseline - 10, baseline + 2);
    boolean beamed =
        group.get(0).up == up
            && span.inside(span.source.beams).stream().anyMatch(beam -> beam.containsAll(group));
    if (!beamed && x2 > x1) {
      double line = baseline - 3.5;
      double hook = up ? 4 : -4;
      svg.path(
          "bracket",
          "M%sv%sH%sM%sH%sv%s"
              .formatted(
                  Svg.point(x1 - 4, line + hook),
                  Svg.number(-hook),
                  Svg.number(middle - 6),
                  Svg.point(middle + 6, line),
                  Svg.number(x2 + 5),
                  Svg.number(hook)));
    }
  }

  /** Whether the number is above: at the stems, unless a slur is there. */
  private boolean over(List<Stem> group) {
    boolean up = group.get(0).rest() ? group.get(group.size() - 1).up : group.get(0).up;
    boolean occupied =
        group.stream()
            .flatMap(stem -> stem.notes.stream())
            .anyMatch(note -> curveOver.apply(note).filter(over -> over == up).isPresent());
    return up != occupied;
  }
}
