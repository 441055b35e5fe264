package fingering.engraving.drawing;

import fingering.engraving.glyph.Box;
import fingering.engraving.glyph.Glyph;
import fingering.engraving.ink.Canvas;
import fingering.engraving.ink.Kind;
import fingering.engraving.ink.Style;

/** A piece of a line of words above the staff: words, a metronome mark, or a sign. */
sealed interface TextPiece permits MetronomeSign, TextPiece.Words, TextPiece.Sign {
  /** Its width in staff spaces. */
  double width();

  /** Draws it from its left edge, on a baseline. */
  void draw(Canvas canvas, double left, double baseline);

  /**
   * Words.
   *
   * @param style the style of the picture
   * @param text the words
   * @param width the width to which they are set
   * @param height the height of their capitals
   */
  record Words(Kind kind, Style style, String text, double width, double height)
      implements TextPiece {
    @Override
    public void draw(Canvas canvas, double left, double baseline) {
      canvas.text(kind, style, text, left, baseline, width, height);
    }
  }

  /**
   * A segno or coda sign.
   *
   * @param glyph its shape
   */
  record Sign(Glyph glyph) implements TextPiece {
    @Override
    public double width() {
      return glyph.width();
    }

    @Override
    public void draw(Canvas canvas, double left, double baseline) {
      Box box = glyph.box();
      canvas.glyph(Kind.WORDS, glyph, left - box.left(), baseline - box.bottom());
    }
  }
}
