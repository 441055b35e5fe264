package fingering.page.svg;

import com.google.common.base.CharMatcher;

/**
 * An upper estimate of the width of a text in any sans serif font of a reader: the widths are those
 * of a wide one, rounded up (measured, no source).
 */
public final class TextWidth {
  private static final CharMatcher NARROW = CharMatcher.anyOf("iljI.,:;'|!()[] ");
  private static final CharMatcher WIDE = CharMatcher.anyOf("mwMW%◇–—");
  private static final double BOLD = 1.12;

  private TextWidth() {}

  /** The width of a text in pixels at a font size in pixels. */
  public static double of(String text, double size) {
    double width = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      width +=
          NARROW.matches(c) ? 0.4 : WIDE.matches(c) ? 1 : Character.isUpperCase(c) ? 0.76 : 0.64;
    }
    return width * size;
  }

  /** The width of a bold text. */
  public static double bold(String text, double size) {
    return of(text, size) * BOLD;
  }
}
