package fingering.engraving.glyph;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import java.util.Collections;
import java.util.Optional;
import java.util.function.IntFunction;

/**
 * Signs that stand side by side on one line, such as the letters of <i>sfz</i> or the figures of
 * 12.
 *
 * @param glyphs the signs from left to right, at least one; the first stands at x = 0
 */
public record GlyphRow(ImmutableList<Placed> glyphs) {
  private static final ImmutableMap<Character, Glyph> LETTERS =
      ImmutableMap.of(
          'p', Glyph.DYNAMIC_P,
          'm', Glyph.DYNAMIC_M,
          'f', Glyph.DYNAMIC_F,
          's', Glyph.DYNAMIC_S,
          'z', Glyph.DYNAMIC_Z,
          'r', Glyph.DYNAMIC_R,
          'n', Glyph.DYNAMIC_N);

  /**
   * By how much two letters stand further apart than their widths say, in staff spaces: the tail of
   * an f reaches under the letter before it. By eye, no source.
   */
  private static final ImmutableMap<String, Double> KERNING =
      ImmutableMap.of(
          "mf", -.42, "pf", -.3, "sf", -.3, "rf", -.35, "mp", -.15, "fp", .12, "fz", .12);

  /**
   * A sign and its place.
   *
   * @param glyph the sign
   * @param x its origin in the row, in staff spaces
   */
  public record Placed(Glyph glyph, double x) {}

  /** Checks that there is a sign. */
  public GlyphRow {
    if (glyphs.isEmpty()) {
      throw new IllegalArgumentException("a row without signs");
    }
  }

  /**
   * A dynamic of the letters p, m, f, s, z, r and n, such as {@code mf} or {@code sfz}; empty if
   * the text is empty or has other characters.
   */
  public static Optional<GlyphRow> dynamic(String text) {
    ImmutableList.Builder<Placed> placed = ImmutableList.builder();
    double x = 0;
    for (int i = 0; i < text.length(); i++) {
      Glyph letter = LETTERS.get(text.charAt(i));
      if (letter == null) {
        return Optional.empty();
      }
      if (i > 0) {
        x += KERNING.getOrDefault(text.substring(i - 1, i + 1), 0.0);
      }
      placed.add(new Placed(letter, x));
      x += letter.advance();
    }
    return text.isEmpty() ? Optional.empty() : Optional.of(new GlyphRow(placed.build()));
  }

  /**
   * A number of a time signature.
   *
   * @throws IllegalArgumentException if it is negative
   */
  public static GlyphRow time(int number) {
    return of(digits(number, Glyph::time));
  }

  /**
   * A number in italics, as for tuplets.
   *
   * @throws IllegalArgumentException if it is negative
   */
  public static GlyphRow italic(int number) {
    return of(digits(number, Glyph::italic));
  }

  /**
   * The Roman numeral of a string.
   *
   * @param string 1 for the highest string, up to 5
   * @throws IllegalArgumentException if it is not from 1 to 5
   */
  public static GlyphRow string(int string) {
    return of(
        switch (string) {
          case 1, 2, 3 -> ImmutableList.copyOf(Collections.nCopies(string, Glyph.NUMERAL_I));
          case 4 -> ImmutableList.of(Glyph.NUMERAL_I, Glyph.NUMERAL_V);
          case 5 -> ImmutableList.of(Glyph.NUMERAL_V);
          default -> throw new IllegalArgumentException("no string " + string);
        });
  }

  private static ImmutableList<Glyph> digits(int number, IntFunction<Glyph> face) {
    if (number < 0) {
      throw new IllegalArgumentException("a number below 0: " + number);
    }
    return Integer.toString(number)
        .chars()
        .map(digit -> digit - '0')
        .mapToObj(face)
        .collect(ImmutableList.toImmutableList());
  }

  private static GlyphRow of(ImmutableList<Glyph> signs) {
    ImmutableList.Builder<Placed> placed = ImmutableList.builder();
    double x = 0;
    for (Glyph sign : signs) {
      placed.add(new Placed(sign, x));
      x += sign.advance();
    }
    return new GlyphRow(placed.build());
  }

  /** The box around all signs. */
  public Box box() {
    return glyphs.stream()
        .map(placed -> placed.glyph().box().moved(placed.x(), 0))
        .reduce(Box::union)
        .orElseThrow();
  }
}
