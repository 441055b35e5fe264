package fingering.engraving.glyph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import com.google.common.collect.ImmutableList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GlyphRowTest {
  @Test
  void dynamicsAreSetFromTheirLetters() {
    assertThat(signs(GlyphRow.dynamic("sfz").orElseThrow()))
        .containsExactly(Glyph.DYNAMIC_S, Glyph.DYNAMIC_F, Glyph.DYNAMIC_Z);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "cresc.", "P", "p ", "mezzo"})
  void otherTextIsNoDynamic(String text) {
    assertThat(GlyphRow.dynamic(text)).isEmpty();
  }

  @Test
  void lettersStandApartByTheirWidth() {
    assertThat(GlyphRow.dynamic("pp").orElseThrow().glyphs().get(1).x())
        .isEqualTo(Glyph.DYNAMIC_P.advance());
  }

  @Test
  void theTailOfAnFReachesUnderTheLetterBefore() {
    assertThat(GlyphRow.dynamic("mf").orElseThrow().glyphs().get(1).x())
        .isLessThan(Glyph.DYNAMIC_M.advance() - .3);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "pp", "ppp", "mp", "mf", "ff", "fff", "sf", "sfz", "sfp", "sffz", "fp", "rf", "rfz", "fz",
        "pf"
      })
  void everyLetterStandsClearlyRightOfTheOneBefore(String text) {
    ImmutableList<GlyphRow.Placed> placed = GlyphRow.dynamic(text).orElseThrow().glyphs();
    for (int i = 1; i < placed.size(); i++) {
      assertThat(placed.get(i).x() - placed.get(i - 1).x()).isGreaterThan(.5);
    }
  }

  @Test
  void numbersAreSetFromFigures() {
    assertThat(signs(GlyphRow.time(12))).containsExactly(Glyph.TIME_1, Glyph.TIME_2);
    assertThat(signs(GlyphRow.italic(3))).containsExactly(Glyph.ITALIC_3);
    assertThatIllegalArgumentException().isThrownBy(() -> GlyphRow.time(-1));
  }

  @Test
  void stringsHaveRomanNumerals() {
    assertThat(signs(GlyphRow.string(1))).containsExactly(Glyph.NUMERAL_I);
    assertThat(GlyphRow.string(3).glyphs()).hasSize(3);
    assertThat(signs(GlyphRow.string(4))).containsExactly(Glyph.NUMERAL_I, Glyph.NUMERAL_V);
    assertThat(signs(GlyphRow.string(5))).containsExactly(Glyph.NUMERAL_V);
    assertThatIllegalArgumentException().isThrownBy(() -> GlyphRow.string(0));
  }

  @Test
  void theBoxHoldsAllSigns() {
    Box box = GlyphRow.time(12).box();
    assertThat(box.left()).isCloseTo(0, within(.01));
    assertThat(box.right()).isEqualTo(Glyph.TIME_1.advance() + Glyph.TIME_2.box().right());
    assertThatIllegalArgumentException().isThrownBy(() -> new GlyphRow(ImmutableList.of()));
  }

  private static ImmutableList<Glyph> signs(GlyphRow row) {
    return row.glyphs().stream()
        .map(GlyphRow.Placed::glyph)
        .collect(ImmutableList.toImmutableList());
  }
}
