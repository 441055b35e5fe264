package fingering.engraving.drawing;

import fingering.engraving.glyph.Box;
import fingering.engraving.glyph.EngravingDefaults;
import fingering.engraving.glyph.GlyphRow;
import fingering.engraving.ink.Canvas;
import fingering.engraving.ink.Kind;
import fingering.engraving.ink.Style;
import fingering.engraving.notes.TextSides;
import fingering.music.print.PrintedPart;
import fingering.music.print.PrintedPart.TextLine;
import fingering.music.print.PrintedPart.Wedge;
import fingering.music.print.PrintedText;
import fingering.music.print.Side;
import fingering.svg.TextWidth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Draws dynamics and hairpins on one baseline below the staff, with the words that go with them.
 */
final class Dynamics {
  private static final double WORDS = 1.8;
  private static final double GAP = 0.55;
  private static final double OPENING = 0.6;
  private static final double SHORTEST = 1.2;

  /** The middle of a small letter over the baseline, where hairpins and dashes are. */
  private static final double MIDDLE = 0.5;

  /** White between a dynamic and a hairpin next to it. */
  private static final double BESIDE = 0.5;

  private final Canvas canvas;
  private final Frame frame;
  private final PrintedPart part;

  Dynamics(Canvas canvas, Frame frame, PrintedPart part) {
    this.canvas = canvas;
    this.frame = frame;
    this.part = part;
  }

  /** A text of this row, from its left edge. */
  private record Item(
      double left,
      double width,
      String text,
      Optional<GlyphRow> letters,
      double time,
      int direction) {
    double right() {
      return left + width;
    }
  }

  private record Hairpin(
      double left, double right, double open0, double open1, boolean lower, double time) {}

  /** The texts of the measures of a system, in order of time. */
  static List<PrintedText> texts(PrintedPart part, Frame frame) {
    double from = frame.from();
    double to = frame.to();
    List<PrintedText> texts = new ArrayList<>();
    for (PrintedText text : part.texts()) {
      double time = text.start().doubleValue();
      if (time >= from - 1e-9 && time < to - 1e-9) {
        texts.add(text);
      }
    }
    return texts;
  }

  void draw() {
    List<Item> items = items();
    List<Hairpin> hairpins = hairpins(items);
    List<Dashes> dashes = dashes(items, hairpins);
    DynamicRows rows = new DynamicRows();
    items.forEach(item -> rows.add(item.left(), item.right(), need(item)));
    hairpins.stream()
        .filter(hairpin -> !hairpin.lower())
        .forEach(one -> rows.add(one.left(), one.right(), need(one)));
    dashes.forEach(one -> rows.add(one.left(), one.right(), need(one)));
    for (Item item : items) {
      canvas.at(item.time());
      item(item, rows.baseline(item.left()));
    }
    canvas.at(Double.NaN);
    for (Dashes each : dashes) {
      dashes(each, rows.baseline(each.left()) - 0.45);
    }
    for (Hairpin hairpin : hairpins) {
      canvas.at(hairpin.time());
      double y =
          hairpin.lower()
              ? canvas.skyline().bottom(hairpin.left(), hairpin.right()) + OPENING + 0.3
              : rows.baseline(hairpin.left()) - MIDDLE;
      hairpin(hairpin, y);
    }
    canvas.at(Double.NaN);
  }

  /** The highest baseline at which a text is clear of what is above it. */
  private double need(Item item) {
    double height = item.letters().map(row -> -row.box().top()).orElse(WORDS * 0.7);
    return canvas.skyline().bottom(item.left() - 0.2, item.right() + 0.2) + GAP + height;
  }

  private double need(Hairpin hairpin) {
    double bottom = canvas.skyline().bottom(hairpin.left(), hairpin.right());
    return bottom + GAP + OPENING + MIDDLE;
  }

  private double need(Dashes dashes) {
    return canvas.skyline().bottom(dashes.left(), dashes.right()) + GAP + MIDDLE;
  }

  private void item(Item item, double baseline) {
    if (item.letters().isPresent()) {
      canvas.row(Kind.DYNAMIC, item.letters().get(), item.left(), baseline, 1);
    } else {
      canvas.text(
          Kind.DYNAMIC, Style.WORDS, item.text(), item.left(), baseline, item.width(), WORDS * 0.7);
    }
  }

  private record Dashes(double left, double right) {}

  /** The dashes of <i>cresc. - - -</i> to the next sign of the row or their end. */
  private List<Dashes> dashes(List<Item> items, List<Hairpin> hairpins) {
    List<Dashes> dashes = new ArrayList<>();
    for (TextLine line : part.textLines()) {
      double begin = line.start().doubleValue();
      double end = line.end().doubleValue();
      if (line.style() != TextLine.Style.DASHES || end <= frame.from() || begin >= frame.to()) {
        continue;
      }
      boolean continued = begin < frame.from() - 1e-9;
      double left = frame.left() + 0.3;
      boolean ours = continued && line.side() != Side.ABOVE;
      for (Item item : items) {
        if (item.direction() == line.direction()) {
          left = item.right() + 0.6;
          ours = true;
        }
      }
      double right = end >= frame.to() - 1e-9 ? frame.right() - 0.6 : frame.x(end) - 0.6;
      for (Item item : items) {
        if (item.left() >= left - 0.3) {
          right = Math.min(right, item.left() - 0.5);
        }
      }
      for (Hairpin hairpin : hairpins) {
        if (hairpin.right() > left) {
          right = Math.min(right, hairpin.left() - 0.5);
        }
      }
      if (ours && right - left >= SHORTEST) {
        dashes.add(new Dashes(left, right));
      }
    }
    return dashes;
  }

  private void dashes(Dashes dashes, double y) {
    canvas.path(
        Style.DASHES, "M%sH%s".formatted(Canvas.point(dashes.left(), y), Canvas.n(dashes.right())));
    canvas.ink(Kind.HAIRPIN, new Box(dashes.left(), y - 0.08, dashes.right(), y + 0.08));
  }

  private List<Item> items() {
    List<Item> items = new ArrayList<>();
    double free = Double.NEGATIVE_INFINITY;
    for (PrintedText text : texts(part, frame)) {
      if (!TextSides.below(text)) {
        continue;
      }
      boolean dynamic = text.kind() == PrintedText.Kind.DYNAMIC;
      Optional<GlyphRow> letters = dynamic ? GlyphRow.dynamic(text.text()) : Optional.empty();
      double width =
          letters
              .map(row -> row.box().width())
              .orElseGet(() -> TextWidth.italic(text.text(), WORDS));
      double head = frame.x(text.start().doubleValue());
      double left = dynamic ? head + 0.6 - Math.min(width, 2.4) / 2 : head;
      left = Math.max(free, left);
      left = Math.min(left, Math.max(free, frame.shape().width() - width));
      items.add(
          new Item(
              left, width, text.text(), letters, text.start().doubleValue(), text.direction()));
      free = left + width + 0.5;
    }
    return items;
  }

  private List<Hairpin> hairpins(List<Item> items) {
    List<Hairpin> hairpins = new ArrayList<>();
    double from = frame.from();
    double to = frame.to();
    for (Wedge wedge : part.wedges().stream().sorted(Comparator.comparing(Wedge::start)).toList()) {
      double begin = wedge.start().doubleValue();
      double end = wedge.end().doubleValue();
      if (end <= from + 1e-9 || begin >= to - 1e-9) {
        continue;
      }
      double left = begin < from - 1e-9 ? frame.left() + 0.3 : frame.x(begin);
      double right = end >= to - 1e-9 ? frame.right() - 0.6 : frame.x(end) - 0.4;
      for (Item item : items) {
        if (item.left() <= left + 0.5 && item.right() + BESIDE > left) {
          left = item.right() + BESIDE;
        } else if (item.left() > left && item.left() - BESIDE < right) {
          right = Math.min(right, item.left() - BESIDE);
        }
      }
      for (Hairpin other : hairpins) {
        if (other.left() < right && left < other.right() + 0.3) {
          left = Math.max(left, other.right() + 0.3);
        }
      }
      // Where the dynamics leave no room, a hairpin goes below them.
      boolean lower = right - left < SHORTEST;
      if (lower) {
        left = begin < from - 1e-9 ? frame.left() + 0.3 : frame.x(begin);
        right = end >= to - 1e-9 ? frame.right() - 0.6 : frame.x(end) - 0.4;
        right = Math.min(Math.max(right, left + SHORTEST), frame.shape().width());
      }
      double share0 = begin < from - 1e-9 ? 0.35 : 0;
      double share1 = end > to + 1e-9 ? 0.65 : 1;
      double open0 = OPENING * (wedge.louder() ? share0 : 1 - share0);
      double open1 = OPENING * (wedge.louder() ? share1 : 1 - share1);
      if (right > left) {
        hairpins.add(new Hairpin(left, right, open0, open1, lower, begin));
      }
    }
    return hairpins;
  }

  private void hairpin(Hairpin hairpin, double y) {
    canvas.path(
        Style.HAIRPIN,
        "M%sL%sM%sL%s"
            .formatted(
                Canvas.point(hairpin.left(), y - hairpin.open0()),
                Canvas.point(hairpin.right(), y - hairpin.open1()),
                Canvas.point(hairpin.left(), y + hairpin.open0()),
                Canvas.point(hairpin.right(), y + hairpin.open1())));
    double open = Math.max(hairpin.open0(), hairpin.open1()) + EngravingDefaults.HAIRPIN / 2;
    canvas.ink(Kind.HAIRPIN, new Box(hairpin.left(), y - open, hairpin.right(), y + open));
  }
}
