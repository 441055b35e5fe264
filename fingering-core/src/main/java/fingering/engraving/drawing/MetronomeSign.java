package fingering.engraving.drawing;

import fingering.engraving.glyph.Box;
import fingering.engraving.glyph.Glyph;
import fingering.engraving.ink.Canvas;
import fingering.engraving.ink.Kind;
import fingering.svg.TextWidth;
import java.util.Optional;

/**
 * A metronome mark: a small note and a number.
 *
 * @param head the notehead; empty if the mark is drawn as text
 * @param flags the number of flags
 * @param dots the number of dots
 * @param text the text after the note
 * @param size the size of the text, in staff spaces
 */
record MetronomeSign(Optional<Glyph> head, int flags, int dots, String text, double size) {
  private static final double SCALE = 0.75;
  private static final double STEM = 2.6;

  /** The sign for a mark such as {@code quarter=96} or {@code quarter.=60}. */
  static MetronomeSign of(String mark, double size) {
    int equals = mark.indexOf('=');
    String unit = equals < 0 ? mark : mark.substring(0, equals).strip();
    String rest = equals < 0 ? "" : "= " + mark.substring(equals + 1).strip();
    int dots = unit.length() - unit.replace(".", "").length();
    String name = unit.replace(".", "").replace("dotted ", "");
    dots += unit.startsWith("dotted ") ? 1 : 0;
    return switch (name) {
      case "half" -> new MetronomeSign(Optional.of(Glyph.HEAD_HALF), 0, dots, rest, size);
      case "quarter" -> new MetronomeSign(Optional.of(Glyph.HEAD_BLACK), 0, dots, rest, size);
      case "eighth" -> new MetronomeSign(Optional.of(Glyph.HEAD_BLACK), 1, dots, rest, size);
      case "16th" -> new MetronomeSign(Optional.of(Glyph.HEAD_BLACK), 2, dots, rest, size);
      case "whole" -> new MetronomeSign(Optional.of(Glyph.HEAD_WHOLE), 0, dots, rest, size);
      default -> new MetronomeSign(Optional.empty(), 0, 0, mark, size);
    };
  }

  private double note() {
    return head.map(
            glyph -> glyph.width() * SCALE + (flags > 0 ? 0.8 : 0) + dots * 0.6 + 0.4)
        .orElse(0.0);
  }

  double width() {
    return note() + TextWidth.serif(text, size);
  }

  void draw(Canvas canvas, double x, double baseline) {
    if (head.isPresent()) {
      double y = baseline - 0.35;
      canvas.glyph(Kind.TEMPO, head.get(), x, y, SCALE);
      double stem = x + head.get().width() * SCALE - 0.06;
      if (head.get() != Glyph.HEAD_WHOLE) {
        canvas.bar(Kind.TEMPO, "ink", stem, y - 0.1, stem, y - STEM * SCALE, 0.11);
      }
      if (flags > 0) {
        Glyph flag = flags == 1 ? Glyph.FLAG_8_UP : Glyph.FLAG_16_UP;
        canvas.glyph(Kind.TEMPO, flag, stem - 0.06, y - STEM * SCALE, SCALE);
      }
      for (int dot = 0; dot < dots; dot++) {
        canvas.glyph(
            Kind.TEMPO, Glyph.DOT, x + head.get().width() * SCALE + 0.25 + 0.5 * dot, y, SCALE);
      }
    }
    double left = x + note();
    double width = TextWidth.serif(text, size);
    if (!text.isEmpty()) {
      canvas.text(Kind.TEMPO, "metronome", text, left, baseline, width, size * 0.74);
    } else {
      canvas.ink(Kind.TEMPO, new Box(x, baseline - 1, left, baseline));
    }
  }
}
