package fingering.engraving.drawing;

import fingering.engraving.glyph.Box;
import fingering.engraving.glyph.Glyph;
import fingering.engraving.ink.Canvas;
import fingering.engraving.ink.Kind;
import fingering.engraving.ink.Style;
import fingering.music.print.PrintedText;
import fingering.svg.TextWidth;
import java.util.Optional;

/**
 * A metronome mark: a small note and a number.
 *
 * @param head the notehead; empty if the mark is drawn as text
 * @param flags the number of flags
 * @param dots the number of dots
 * @param before the text before the note
 * @param text the text after the note
 * @param size the size of the text, in staff spaces
 */
record MetronomeSign(
    Optional<Glyph> head, int flags, int dots, String before, String text, double size)
    implements TextPiece {
  private static final double SCALE = 0.75;
  private static final double STEM = 2.6;

  /** The sign of a metronome mark; one without a note value is drawn as text. */
  static MetronomeSign of(PrintedText mark, double size) {
    if (mark.metronome().isEmpty()) {
      return new MetronomeSign(Optional.empty(), 0, 0, "", mark.text(), size);
    }
    PrintedText.Metronome metronome = mark.metronome().get();
    Glyph head =
        switch (metronome.unit().part()) {
          case 0, 1 -> Glyph.HEAD_WHOLE;
          case 2 -> Glyph.HEAD_HALF;
          default -> Glyph.HEAD_BLACK;
        };
    return new MetronomeSign(
        Optional.of(head),
        metronome.unit().flags(),
        metronome.unit().dots(),
        metronome.parentheses() ? "(" : "",
        "= " + metronome.number() + (metronome.parentheses() ? ")" : ""),
        size);
  }

  private double note() {
    return head.map(glyph -> glyph.width() * SCALE + (flags > 0 ? 0.8 : 0) + dots * 0.6 + 0.6)
        .orElse(0.0);
  }

  @Override
  public double width() {
    return TextWidth.serif(before, size) + note() + TextWidth.serif(text, size);
  }

  @Override
  public void draw(Canvas canvas, double left, double baseline) {
    double x = left + TextWidth.serif(before, size);
    if (!before.isEmpty()) {
      canvas.text(Kind.TEMPO, Style.METRONOME, before, left, baseline, x - left, size * 0.74);
    }
    if (head.isPresent()) {
      double y = baseline - 0.35;
      canvas.glyph(Kind.TEMPO, head.get(), x, y, SCALE);
      double stem = x + head.get().width() * SCALE - 0.06;
      if (head.get() != Glyph.HEAD_WHOLE) {
        canvas.bar(Kind.TEMPO, Style.INK, stem, y - 0.1, stem, y - STEM * SCALE, 0.11);
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
    double at = x + note();
    double width = TextWidth.serif(text, size);
    if (!text.isEmpty()) {
      canvas.text(Kind.TEMPO, Style.METRONOME, text, at, baseline, width, size * 0.74);
    } else {
      canvas.ink(Kind.TEMPO, new Box(x, baseline - 1, at, baseline));
    }
  }
}
