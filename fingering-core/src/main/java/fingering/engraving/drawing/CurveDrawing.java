package fingering.engraving.drawing;

import com.google.common.collect.ImmutableSet;
import com.google.common.primitives.ImmutableDoubleArray;
import fingering.engraving.drawing.Frame.Spot;
import fingering.engraving.glyph.Box;
import fingering.engraving.glyph.EngravingDefaults;
import fingering.engraving.ink.Canvas;
import fingering.engraving.ink.Ink;
import fingering.engraving.ink.Kind;
import fingering.engraving.ink.Skyline;
import fingering.engraving.notes.Chord;
import fingering.engraving.notes.Chord.Layer;
import fingering.music.NoteAddress;
import fingering.music.print.PrintedPart.Slur;
import fingering.music.print.Side;
import fingering.tables.Pitch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Draws slurs and ties, also those that come from the system before or lead to the next. */
final class CurveDrawing {
  private static final double TIE_REACH = 0.28;
  private static final double SLUR_REACH = 0.3;

  /** Slurs with a high note next to one end are squarer: a smaller reach. */
  private static final ImmutableDoubleArray REACHES =
      ImmutableDoubleArray.of(SLUR_REACH, 0.2, 0.12);

  /** What a reach smaller by 1 costs. */
  private static final double SQUARE_COST = 5;

  /** A slur that costs no more needs no other reach. */
  private static final double EASY = 1.2;

  /** White between a slur and what it passes. */
  private static final double CLEAR = 0.4;

  private static final double STEP = 0.25;

  /** The length of a tie that leads to no note. */
  private static final double LOOSE = 2.5;

  /** The steepest line between the ends of a slur: staff spaces for each space to the right. */
  private static final double STEEPEST = 1.2;

  /** How often the ends of a slur are moved at most. */
  private static final int ROUNDS = 4;

  /** What a space of height costs, compared with an end a space away from its note. */
  private static final double BEND_COST = 0.7;

  /** What a small slur must not touch. */
  private static final ImmutableSet<Kind> PASSED =
      ImmutableSet.of(
          Kind.HEAD, Kind.ACCIDENTAL, Kind.BEAM, Kind.REST, Kind.ARTICULATION, Kind.TUPLET);

  private final Canvas canvas;
  private final Frame frame;
  private final Times times;

  CurveDrawing(Canvas canvas, Frame frame, Times times) {
    this.canvas = canvas;
    this.frame = frame;
    this.times = times;
  }

  // ---- ties

  void ties() {
    Map<Pitch, Spot> open = new LinkedHashMap<>();
    List<Spot> all = new ArrayList<>();
    frame.spots().forEach(all::add);
    all.sort(Comparator.comparingDouble(Spot::time).thenComparing(spot -> !spot.chord().grace()));
    for (NoteAddress address : times.tiedInto(frame)) {
      frame.spot(address).ifPresent(spot -> tie(Optional.empty(), Optional.of(spot)));
    }
    for (Spot spot : all) {
      spot.note()
          .pitch()
          .map(open::remove)
          .ifPresent(from -> tie(Optional.of(from), Optional.of(spot)));
      if (spot.note().tied()) {
        open.put(spot.note().pitch().orElseThrow(), spot);
      }
    }
    open.values().stream()
        .sorted(Comparator.comparingDouble(Spot::time))
        .forEach(spot -> tie(Optional.of(spot), Optional.empty()));
  }

  private void tie(Optional<Spot> from, Optional<Spot> to) {
    Spot known = from.or(() -> to).orElseThrow();
    boolean above = tieAbove(known);
    double side = above ? -1 : 1;
    double y = known.y() + side * 0.62;
    boolean atStem = known.chord().stemmed() && known.chord().up() == above;
    double x0 = from.map(spot -> spot.right() + (atStem ? 0.1 : -0.15)).orElse(frame.left() + 0.1);
    double x1 = to.map(spot -> spot.left() + 0.15).orElseGet(() -> open(known));
    if (from.isPresent() && from.get().note().value().dots() > 0) {
      x0 = from.get().columnX() + from.get().column().right() + 0.05;
    }
    if (x1 - x0 < 1) {
      double middle = (x0 + x1) / 2;
      x0 = middle - 0.5;
      x1 = middle + 0.5;
    }
    double bend = -side * Math.min(1.1, 0.45 + 0.05 * (x1 - x0));
    new Curve(x0, y, x1, y, bend, TIE_REACH)
        .draw(canvas, Kind.TIE, EngravingDefaults.TIE_MIDDLE - EngravingDefaults.TIE_END);
  }

  /** The end of a tie to the next system; a tie that leads to no note is short. */
  private double open(Spot spot) {
    boolean last = spot.time() + spot.note().length().doubleValue() >= frame.to() - 1e-6;
    return last ? frame.right() - 0.2 : Math.min(frame.right() - 0.2, spot.right() + LOOSE);
  }

  /** Above for the upper notes of a chord, else on the side away from the stem. */
  private static boolean tieAbove(Spot spot) {
    Chord chord = spot.chord();
    if (chord.layer() != Layer.ALONE) {
      return chord.layer() == Layer.UPPER;
    }
    if (chord.notes().size() == 1) {
      return !chord.up();
    }
    return chord.notes().indexOf(spot.note()) >= (chord.notes().size() + 1) / 2
        || (!chord.up() && chord.notes().indexOf(spot.note()) == chord.notes().size() - 1);
  }

  // ---- slurs

  void slurs(List<Slur> slurs) {
    slurs.stream()
        .filter(this::here)
        .sorted(Comparator.comparingDouble(slur -> times.of(slur.to()) - times.of(slur.from())))
        .forEach(slur -> slur(slur, times.of(slur.from()), times.of(slur.to())));
  }

  private boolean here(Slur slur) {
    return times.of(slur.to()) >= frame.from() - 1e-9 && times.of(slur.from()) < frame.to() - 1e-9;
  }

  private void slur(Slur slur, double begin, double end) {
    Optional<Spot> from = frame.spot(slur.from());
    Optional<Spot> to = frame.spot(slur.to());
    if (from.isEmpty() && to.isEmpty() && (begin >= frame.from() || end < frame.to() - 1e-6)) {
      return;
    }
    boolean above =
        slur.side() == Side.AUTO ? above(from, to, begin, end) : slur.side() == Side.ABOVE;
    if (!above && from.isPresent() && to.isPresent() && graceSlur(from.get(), to.get())) {
      return;
    }
    double x0 = from.map(spot -> end(spot, above)).orElse(frame.left() + 0.2);
    double x1 = to.map(spot -> end(spot, above)).orElse(frame.right() - 0.2);
    if (from.isPresent() && to.isPresent() && x1 - x0 < 0.8) {
      x0 -= 0.4;
      x1 += 0.4;
    }
    double side = above ? -1 : 1;
    double y0 = edge(x0 - 0.25, x0 + 0.25, above, from.isPresent()) + side * CLEAR;
    double y1 = edge(x1 - 0.25, x1 + 0.25, above, to.isPresent()) + side * CLEAR;
    // An open end is level with the other one, so that it reads as going on.
    if (from.isEmpty()) {
      y0 = outer(y0, y1 + side * 0.8, above);
    }
    if (to.isEmpty()) {
      y1 = outer(y1, y0 + side * 0.8, above);
    }
    // Between a low and a high note the inner end moves out, so that the slur is no stroke.
    double steepest = STEEPEST * (x1 - x0);
    if (Math.abs(y1 - y0) > steepest) {
      double far = outer(y0, y1, above) - side * steepest;
      y0 = outer(y0, far, above);
      y1 = outer(y1, far, above);
    }
    fitted(x0, y0, x1, y1, above)
        .draw(canvas, Kind.SLUR, EngravingDefaults.SLUR_MIDDLE - EngravingDefaults.SLUR_END);
  }

  /** A small slur from a grace note to its note hangs at the heads, if nothing is in its way. */
  private boolean graceSlur(Spot from, Spot to) {
    boolean small = from.chord().grace() && !to.chord().grace() && !to.note().rest();
    if (!small || to.columnX() < from.columnX()) {
      return false;
    }
    double x0 = from.middle();
    double x1 = to.chord().up() ? to.middle() : to.left() - 0.2;
    double y0 = from.chord().bottom() + 0.6;
    double y1 = to.chord().bottom() + (to.chord().up() ? 0.75 : 0.3);
    for (double bend = 0.8; bend < 2.5; bend += STEP) {
      Curve curve = new Curve(x0, y0, x1, y1, -bend, SLUR_REACH);
      if (clear(curve)) {
        curve.draw(
            canvas, Kind.SLUR, (EngravingDefaults.SLUR_MIDDLE - EngravingDefaults.SLUR_END) * 0.8);
        return true;
      }
    }
    return false;
  }

  /** Whether a curve below passes no head, accidental, beam or sign. */
  private boolean clear(Curve curve) {
    List<Box> boxes =
        canvas.inks().stream()
            .filter(ink -> PASSED.contains(ink.kind()))
            .map(Ink::box)
            .filter(box -> box.right() > curve.x0() - 0.1 && box.left() < curve.x1() + 0.1)
            .toList();
    for (double t = 0; t <= 1; t += 0.02) {
      double x = curve.x(t);
      double y = curve.y(t);
      for (Box box : boxes) {
        if (box.left() - 0.15 < x
            && x < box.right() + 0.15
            && box.top() - 0.15 < y
            && y < box.bottom() + 0.2) {
          return false;
        }
      }
    }
    return true;
  }

  private static double outer(double a, double b, boolean above) {
    return above ? Math.min(a, b) : Math.max(a, b);
  }

  /** Where a slur ends at a note: over its head, or at the end of its stem. */
  private double end(Spot spot, boolean above) {
    boolean atStem = spot.chord().stemmed() && spot.chord().up() == above;
    return atStem ? frame.stem(spot) : spot.middle();
  }

  /** Above, unless all notes have their stems up. */
  private boolean above(Optional<Spot> from, Optional<Spot> to, double begin, double end) {
    Optional<Layer> layer =
        from.or(() -> to).map(spot -> spot.chord().layer()).filter(one -> one != Layer.ALONE);
    if (layer.isPresent()) {
      return layer.get() == Layer.UPPER;
    }
    boolean grace = from.isPresent() && from.get().chord().grace();
    if (grace && to.isPresent() && !to.get().chord().grace()) {
      return false;
    }
    for (Spot spot : frame.spots()) {
      boolean inside = spot.time() >= begin - 1e-9 && spot.time() <= end + 1e-9;
      if (inside
          && NoteDrawing.played(spot.note())
          && !spot.chord().up()
          && !spot.chord().grace()) {
        return true;
      }
    }
    return false;
  }

  /** How far notes reach; where a slur goes on in another system, also how far the staff does. */
  private double edge(double left, double right, boolean above, boolean atNote) {
    Skyline skyline = atNote ? canvas.notes() : canvas.skyline();
    return above ? skyline.top(left, right) : skyline.bottom(left, right);
  }

  /**
   * The best curve that passes everything between its ends: flat, with its ends near the notes. For
   * each height the ends are moved out no further than they must.
   */
  private Curve fitted(double x0, double y0, double x1, double y1, boolean above) {
    double side = above ? -1 : 1;
    double length = x1 - x0;
    double least = Math.min(2.6, 0.7 + 0.09 * length);
    double most = Math.max(least, Math.min(5, 0.25 * length + 0.8));
    Curve best = new Curve(x0, y0, x1, y1, -side * most, SLUR_REACH);
    double lowest = Double.POSITIVE_INFINITY;
    for (double reach : REACHES.toArray()) {
      for (double bend = least; bend <= most + 1e-9; bend += STEP) {
        Curve curve = new Curve(x0, y0, x1, y1, -side * bend, reach);
        double[] lift = lift(curve, above);
        double cost =
            (bend - least) * BEND_COST
                + far(lift[0])
                + far(lift[1])
                + (SLUR_REACH - reach) * SQUARE_COST;
        if (cost < lowest - 1e-9) {
          lowest = cost;
          best = new Curve(x0, y0 + side * lift[0], x1, y1 + side * lift[1], -side * bend, reach);
        }
        if (lift[0] + lift[1] == 0) {
          break;
        }
      }
      if (lowest < EASY) {
        break;
      }
    }
    return settled(best, above);
  }

  /** What it costs that an end is away from its note. */
  private static double far(double lift) {
    return lift + 0.15 * lift * lift;
  }

  /** A leaning curve changes when its ends move, so that they may have to move once more. */
  private Curve settled(Curve curve, boolean above) {
    double side = above ? -1 : 1;
    Curve now = curve;
    for (int i = 0; i < ROUNDS; i++) {
      double[] lift = lift(now, above);
      if (lift[0] + lift[1] < 0.02) {
        break;
      }
      now =
          new Curve(
              now.x0(),
              now.y0() + side * lift[0],
              now.x1(),
              now.y1() + side * lift[1],
              now.bend(),
              now.reach());
    }
    return now;
  }

  /** How far the left and the right end must move out so that a curve passes everything. */
  private double[] lift(Curve curve, boolean above) {
    double size = curve.x1() - curve.x0() + Math.abs(curve.y1() - curve.y0());
    int samples = Math.max(16, (int) (size * 2.5));
    double left = 0;
    double right = 0;
    for (int half = 0; half < 2; half++) {
      for (int i = 0; i <= samples; i++) {
        double t = 0.02 + 0.96 * i / samples;
        double x = curve.x(t);
        double share = (x - curve.x0()) / (curve.x1() - curve.x0());
        if ((share < 0.5) != (half == 0)) {
          continue;
        }
        // Next to its ends a slur may come nearer to the notes that it starts and ends at.
        double near = Math.min(1, Math.min(share, 1 - share) * (curve.x1() - curve.x0()) / 1.2);
        double white = 0.12 + near * (CLEAR - 0.12);
        double edge = edge(x - 0.18, x + 0.18, above, true);
        double missing = above ? curve.y(t) - (edge - white) : edge + white - curve.y(t);
        missing -= left * (1 - share) + right * share;
        if (missing > 0) {
          left += half == 0 ? missing / (1 - share) : 0;
          right += half == 0 ? 0 : missing / share;
        }
      }
    }
    return new double[] {left, right};
  }
}
