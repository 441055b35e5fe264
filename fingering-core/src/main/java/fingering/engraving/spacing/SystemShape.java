package fingering.engraving.spacing;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableDoubleArray;
import fingering.engraving.glyph.EngravingDefaults;
import fingering.music.print.Clef;
import fingering.music.print.PrintedMeasure.KeyChange;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A system: measures in one line, with the place of everything from left to right.
 *
 * @param measures the measures
 * @param header clef, key and time signature at its start
 * @param places the places of each measure
 * @param courtesy signs at its end that announce a change in the next system
 * @param width the width, in staff spaces
 */
public record SystemShape(
    ImmutableList<MeasureShape> measures,
    ImmutableList<Placed> header,
    ImmutableList<Places> places,
    ImmutableList<Placed> courtesy,
    double width) {
  /** White between clef and key, key and time signature. */
  private static final double HEADER_GAP = 0.7;

  /** White to the left of the clef. */
  private static final double CLEF_AT = 0.6;

  private static final double CHANGE_GAP = 0.7;

  /** A last system that fills the width at this stretch or less is justified too. */
  private static final double NEARLY_FULL = 1.25;

  /** White between courtesy signs and the end of the staff. */
  private static final double AFTER_COURTESY = 0.6;

  /**
   * The places of a measure.
   *
   * @param left its left edge: the bar line before it, or the end of the header
   * @param changes key, time signature at its start, within a system
   * @param repeat the x of a repeat's start sign; empty if none starts
   * @param columns the x of each column
   * @param bar the right edge of its bar line, or of the part of the measure
   * @param clef the change of clef before the bar line
   */
  public record Places(
      double left,
      ImmutableList<Placed> changes,
      Optional<Double> repeat,
      ImmutableDoubleArray columns,
      double bar,
      ImmutableList<Placed> clef) {}

  /** What stands before the first note of a measure within a system. */
  private static ImmutableList<Placed> changes(MeasureShape before, MeasureShape now) {
    if (!now.opens()) {
      return ImmutableList.of();
    }
    List<Placed> signs = new ArrayList<>();
    double x = CHANGE_GAP;
    int key = before.notes().lastKey();
    Clef clef = now.notes().printed().clef();
    if (key != now.notes().measure().fifths()) {
      ImmutableList<Placed> all =
          Signatures.key(
              clef,
              now.notes().measure().fifths(),
              key,
              now.notes().printed().key().map(KeyChange::cancelled).orElse(false));
      signs.addAll(Signatures.moved(all, x));
      x += Signatures.width(all) + HEADER_GAP;
    }
    if (Signatures.meterChanges(before.notes().measure(), now.notes().measure())) {
      signs.addAll(Signatures.moved(Signatures.meter(now.notes()), x));
    }
    return ImmutableList.copyOf(signs);
  }

  /** Clef, key and, at the start of the music or at a change, the time signature. */
  private static ImmutableList<Placed> header(Optional<MeasureShape> before, MeasureShape first) {
    List<Placed> signs = new ArrayList<>();
    double onset = first.from();
    Clef clef =
        first.opens()
            ? first.notes().printed().clef()
            : first.notes().printed().clefAt(first.columns().get(0).column().onset());
    ImmutableList<Placed> sign = Signatures.clef(clef, false);
    double x = CLEF_AT;
    signs.addAll(Signatures.moved(sign, x));
    x += Signatures.width(sign) + HEADER_GAP;
    int fifths =
        onset == 0
            ? first.notes().measure().fifths()
            : first
                .notes()
                .printed()
                .fifthsAt(
                    first.columns().get(0).column().onset(), first.notes().measure().fifths());
    ImmutableList<Placed> key = Signatures.key(clef, fifths, 0, false);
    if (!key.isEmpty()) {
      signs.addAll(Signatures.moved(key, x));
      x += Signatures.width(key) + HEADER_GAP;
    }
    boolean timed =
        first.opens()
            && (before.isEmpty()
                || Signatures.meterChanges(
                    before.get().notes().measure(), first.notes().measure()));
    if (timed) {
      signs.addAll(Signatures.moved(Signatures.meter(first.notes()), x));
    }
    return ImmutableList.copyOf(signs);
  }

  /** The small clef before the bar line, if the next measure has another clef. */
  private static ImmutableList<Placed> clef(MeasureShape now, Optional<MeasureShape> next) {
    if (!now.closes()
        || next.isEmpty()
        || now.notes().lastClef().equals(next.get().notes().printed().clef())) {
      return ImmutableList.of();
    }
    return Signatures.clef(next.get().notes().printed().clef(), true);
  }

  /** The width of everything in a measure that is neither stretched nor squeezed. */
  private static double fixed(
      ImmutableList<Placed> changes, ImmutableList<Placed> clef, MeasureShape measure) {
    double repeat = repeats(measure) ? BarLines.repeatStart() : 0;
    return Signatures.width(changes)
        + (repeats(measure) && !changes.isEmpty() ? CHANGE_GAP : 0)
        + repeat
        + (clef.isEmpty() ? 0 : Signatures.width(clef) + CHANGE_GAP / 2)
        + measure.barWidth();
  }

  /** How much of the bar line before it the start of a repeat replaces or shares. */
  private static double shared(MeasureShape before) {
    return switch (before.notes().printed().end()) {
      case SINGLE, DOUBLE -> before.barWidth();
      case FINAL, REPEAT -> EngravingDefaults.THICK_BAR_LINE;
      default -> 0;
    };
  }

  private static boolean repeats(MeasureShape measure) {
    return measure.opens() && measure.notes().printed().repeatStart();
  }

  /** The fixed width of a measure within a system. */
  static double fixedWidth(MeasureShape before, MeasureShape now, Optional<MeasureShape> next) {
    return fixed(changes(before, now), clef(now, next), now);
  }

  /** The fixed width of the first measure of a system, with the header. */
  static double firstWidth(
      Optional<MeasureShape> before, MeasureShape now, Optional<MeasureShape> next) {
    return Signatures.width(header(before, now)) + fixed(ImmutableList.of(), clef(now, next), now);
  }

  /** The width of the courtesy signs at the end of a system. */
  static double courtesyWidth(MeasureShape last, Optional<MeasureShape> next) {
    ImmutableList<Placed> signs = courtesy(last, next);
    return signs.isEmpty() ? 0 : Signatures.width(signs) + AFTER_COURTESY;
  }

  private static ImmutableList<Placed> courtesy(MeasureShape last, Optional<MeasureShape> next) {
    return next.isEmpty() || !last.closes() ? ImmutableList.of() : changes(last, next.get());
  }

  /**
   * Places a system.
   *
   * @param before the last measure of the system before; empty for the first system
   * @param measures the measures, at least one
   * @param next the first measure of the next system; empty for the last
   * @param width the width to fill, in staff spaces
   * @param ragged whether it may be narrower, as the last system may if it is not nearly full
   */
  static SystemShape of(
      Optional<MeasureShape> before,
      List<MeasureShape> measures,
      Optional<MeasureShape> next,
      double width,
      boolean ragged) {
    ImmutableList<Placed> header = header(before, measures.get(0));
    ImmutableList<Placed> courtesy = courtesy(measures.get(measures.size() - 1), next);
    double fixed =
        Signatures.width(header) + courtesyWidth(measures.get(measures.size() - 1), next);
    List<ImmutableList<Placed>> changes = new ArrayList<>();
    List<ImmutableList<Placed>> clefs = new ArrayList<>();
    for (int i = 0; i < measures.size(); i++) {
      MeasureShape now = measures.get(i);
      changes.add(i == 0 ? ImmutableList.of() : changes(measures.get(i - 1), now));
      clefs.add(clef(now, i + 1 < measures.size() ? Optional.of(measures.get(i + 1)) : next));
      fixed += fixed(changes.get(i), clefs.get(i), now);
    }
    double stretch = Springs.stretch(measures, width - fixed);
    boolean filled = !ragged || stretch <= NEARLY_FULL;
    if (!filled) {
      stretch = 1;
    }
    double x = Signatures.width(header);
    ImmutableList.Builder<Places> places = ImmutableList.builder();
    for (int i = 0; i < measures.size(); i++) {
      MeasureShape now = measures.get(i);
      double left = x;
      ImmutableList<Placed> signs = Signatures.moved(changes.get(i), left);
      x = Math.max(x, left + Signatures.width(changes.get(i)));
      Optional<Double> repeat = Optional.empty();
      if (repeats(now)) {
        x += changes.get(i).isEmpty() ? 0 : CHANGE_GAP;
        boolean alone = changes.get(i).isEmpty();
        double shared = i == 0 || !alone ? 0 : shared(measures.get(i - 1));
        repeat = Optional.of(i == 0 ? x + 0.4 : x - shared);
        x += BarLines.repeatStart();
      }
      ImmutableDoubleArray.Builder columns = ImmutableDoubleArray.builder(now.columns().size());
      for (int c = 0; c < now.columns().size(); c++) {
        x += Springs.length(now, c, stretch);
        columns.add(x);
      }
      x += Springs.length(now, now.columns().size(), stretch);
      ImmutableList<Placed> clef = Signatures.moved(clefs.get(i), x);
      x += clef.isEmpty() ? 0 : Signatures.width(clefs.get(i)) + CHANGE_GAP / 2;
      x += now.barWidth();
      places.add(new Places(left, signs, repeat, columns.build(), x, clef));
    }
    double end = x + courtesyWidth(measures.get(measures.size() - 1), next);
    return new SystemShape(
        ImmutableList.copyOf(measures),
        header,
        places.build(),
        Signatures.moved(courtesy, x),
        filled ? Math.max(end, width) : end);
  }
}
