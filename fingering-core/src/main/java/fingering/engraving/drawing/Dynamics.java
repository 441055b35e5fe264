package fingering.engraving.drawing;

import com.google.common.base.Ascii;
import com.google.common.collect.ImmutableSet;
import fingering.engraving.glyph.Box;
import fingering.engraving.glyph.EngravingDefaults;
import fingering.engraving.glyph.GlyphRow;
import fingering.engraving.ink.Canvas;
import fingering.engraving.ink.Kind;
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
  private static final double GAP = 0.5;
  private static final double OPENING = 0.6;
  private static final double SHORTEST = 1.2;

  /** Words that belong to the dynamics (common practice). */
  private static final ImmutableSet<String> DYNAMIC_WORDS =
      ImmutableSet.of(
          "cresc",
          "crescendo",
          "decresc",
          "decrescendo",
          "dim",
          "dimin",
          "diminuendo",
          "subito",
          "sub",
          "più",
          "piu",
          "meno",
          "poco",
          "molto",
          "sempre",
          "mezza",
          "sotto",
          "al",
          "f",
          "p",
          "ff",
          "pp",
          "mf",
          "mp",
          "fp",
          "forte",
          "piano",
          "morendo",
          "smorzando",
          "smorz",
          "calando",
          "perdendosi");

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
      double left, double width, String text, boolean dynamic, double time, int direction) {
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

  /** Whether a text stands below the staff. */
  static boolean below(PrintedText text) {
    if (text.kind() == PrintedText.Kind.DYNAMIC) {
      return true;
    }
    if (text.kind() != PrintedText.Kind.WORDS || text.side() == Side.ABOVE) {
      return false;
    }
    if (text.side() == Side.BELOW) {
      return true;
    }
    for (String word : Ascii.toLowerCase(text.text()).split("[ .,]+", -1)) {
      if (!word.isEmpty() && !DYNAMIC_WORDS.contains(word)) {
        return false;
      }
    }
    return true;
  }

  void draw() {
    List<Item> items = items();
    List<Hairpin> hairpins = hairpins(items);
    List<Dashes> dashes = dashes(items);
    if (items.isEmpty() && hairpins.isEmpty() && dashes.isEmpty()) {
      return;
    }
    double bottom = 4;
    for (Item item : items) {
      bottom = Math.max(bottom, canvas.skyline().bottom(item.left() - 0.2, item.right() + 0.2));
    }
    for (Hairpin hairpin : hairpins) {
      bottom = Math.max(bottom, canvas.skyline().bottom(hairpin.left(), hairpin.right()) - 0.4);
    }
    for (Dashes each : dashes) {
      bottom = Math.max(bottom, canvas.skyline().bottom(each.left(), each.right()) - 1);
    }
    double baseline = bottom + GAP + 1.5;
    for (Item item : items) {
      canvas.at(item.time());
      Optional<GlyphRow> letters =
          item.dynamic() ? GlyphRow.dynamic(item.text()) : Optional.empty();
      if (letters.isPresent()) {
        canvas.row(Kind.DYNAMIC, letters.get(), item.left(), baseline, 1);
      } else {
        canvas.text(
            Kind.DYNAMIC, "words", item.text(), item.left(), baseline, item.width(), WORDS * 0.7);
      }
    }
    for (Dashes each : dashes) {
      dashes(each, baseline - 0.45);
    }
    for (Hairpin hairpin : hairpins) {
      canvas.at(hairpin.time());
      double y = baseline - 0.55;
      if (hairpin.lower()) {
        y = Math.max(y, canvas.skyline().bottom(hairpin.left(), hairpin.right()) + OPENING + 0.3);
      }
      hairpin(hairpin, y);
    }
    canvas.at(Double.NaN);
  }

  private record Dashes(double left, double right) {}

  /** The dashes of <i>cresc. - - -</i> to the next sign of the row or their end. */
  private List<Dashes> dashes(List<Item> items) {
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
      if (ours && right - left >= SHORTEST) {
        dashes.add(new Dashes(left, right));
      }
    }
    return dashes;
  }

  private void dashes(Dashes dashes, double y) {
    canvas.path(
        "dashes", "M%sH%s".formatted(Canvas.point(dashes.left(), y), Canvas.n(dashes.right())));
    canvas.ink(Kind.HAIRPIN, new Box(dashes.left(), y - 0.08, dashes.right(), y + 0.08));
  }

  private List<Item> items() {
    List<Item> items = new ArrayList<>();
    double free = Double.NEGATIVE_INFINITY;
    for (PrintedText text : texts(part, frame)) {
      if (!below(text)) {
        continue;
      }
      boolean dynamic = text.kind() == PrintedText.Kind.DYNAMIC;
      double width =
          (dynamic ? GlyphRow.dynamic(text.text()) : Optional.<GlyphRow>empty())
              .map(row -> row.box().width())
              .orElseGet(() -> TextWidth.italic(text.text(), WORDS));
      double head = frame.x(text.start().doubleValue());
      double left = dynamic ? head + 0.6 - Math.min(width, 2.4) / 2 : head;
      left = Math.max(free, left);
      left = Math.min(left, Math.max(free, frame.system().width() - width));
      items.add(
          new Item(
              left, width, text.text(), dynamic, text.start().doubleValue(), text.direction()));
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
        if (item.left() <= left + 0.5 && item.right() + 0.3 > left) {
          left = item.right() + 0.35;
        } else if (item.left() > left && item.left() - 0.35 < right) {
          right = Math.min(right, item.left() - 0.35);
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
        right = Math.min(Math.max(right, left + SHORTEST), frame.system().width());
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
        "hairpin",
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
