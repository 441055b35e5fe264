package fingering.svg;

import com.google.common.base.CharMatcher;

/**
 * An upper estimate of the width of a text in any sans serif font of a reader: the widths are those
 * of a wide one, rounded up (measured, no source).
 */
public final class TextWidth {
  private static final CharMatcher NARROW = CharMatcher.anyOf("iljI.,:;'|!()[] ");
  private static final CharMatcher WIDE = CharMatcher.anyOf("mwMW%◇–—");

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

  /**
   * The width at which a text in a serif typeface is set: letters as wide as those of a common one,
   * in thousandths of its size (widths of a Roman of the Times family, from memory).
   */
  public static double serif(String text, double size) {
    double width = 0;
    for (int i = 0; i < text.length(); i++) {
      width += serif(text.charAt(i));
    }
    return width * size / 1000;
  }

  private static int serif(char c) {
    return switch (c) {
      case 'i', 'j', 'l', 't', '\'', '|', '!' -> 300;
      case ' ', '.', ',', ';', ':' -> 255;
      case 'f', 'r', 's', '(', ')', '[', ']', '-' -> 365;
      case 'a', 'c', 'e', 'z' -> 450;
      case 'm' -> 790;
      case 'w' -> 720;
      case 'M', 'W' -> 900;
      case 'I', 'J' -> 390;
      case '=' -> 565;
      case '–' -> 500;
      default -> Character.isUpperCase(c) ? 680 : 500;
    };
  }

  /** The width at which a text in italics is set. */
  public static double italic(String text, double size) {
    return serif(text, size) * 0.96;
  }

  /** The width at which a bold text in a serif typeface is set. */
  public static double boldSerif(String text, double size) {
    return serif(text, size) * 1.06;
  }
}
