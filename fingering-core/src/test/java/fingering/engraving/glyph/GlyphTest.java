package fingering.engraving.glyph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fingering.tables.Table;
import java.awt.geom.Path2D;
import java.util.Arrays;
import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Checks the shapes against the metrics of SMuFL's reference font, from memory. */
class GlyphTest {
  /** Two decimals in the table, and rounding. */
  private static final double ROUNDING = .011;

  @Test
  void everyRowIsASignAndEverySignARow() {
    assertThat(Table.load(Glyph.class, "glyphs.table", 5).rows())
        .extracting(row -> row.text(0))
        .containsExactlyElementsOf(Arrays.stream(Glyph.values()).map(Glyph::key).toList());
  }

  @ParameterizedTest
  @CsvSource({
    "HEAD_BLACK, 1.18, 1.0",
    "HEAD_HALF, 1.18, 1.0",
    "HEAD_WHOLE, 1.69, 1.0",
    "HEAD_BREVE, 2.4, 1.24",
    "HEAD_DIAMOND_BLACK, 1.0, 1.0",
    "SHARP, 1.0, 2.8",
    "FLAT, 0.9, 2.46",
    "NATURAL, 0.67, 2.72",
    "DOUBLE_SHARP, 1.0, 1.0",
    "DOUBLE_FLAT, 1.64, 2.46",
    "G_CLEF, 2.6, 7.0",
    "F_CLEF, 2.74, 3.6",
    "C_CLEF, 2.8, 4.0",
    "REST_WHOLE, 1.13, 0.54",
    "REST_HALF, 1.13, 0.54",
    "REST_BREVE, 0.5, 1.0",
    "REST_QUARTER, 1.08, 3.0",
    "REST_8, 1.0, 1.7",
    "REST_16, 1.28, 2.7",
    "REST_32, 1.6, 3.7",
    "FLAG_8_UP, 1.06, 3.25",
    "FLAG_8_DOWN, 1.06, 3.25",
    "DOT, 0.4, 0.4",
    "TIME_COMMON, 1.7, 2.0",
    "ACCENT, 1.36, 0.96",
    "TENUTO, 1.35, 0.18",
    "STACCATO, 0.34, 0.34",
    "FERMATA_ABOVE, 2.42, 1.32",
    "DOWN_BOW, 1.25, 1.3",
    "UP_BOW, 1.08, 1.8",
  })
  void sizesAreThoseOfEngravedMusic(Glyph glyph, double width, double height) {
    assertThat(glyph.width()).isCloseTo(width, within(.1 * width));
    assertThat(glyph.box().height()).isCloseTo(height, within(.1 * height));
  }

  @ParameterizedTest
  @CsvSource({
    "G_CLEF, -4.4, 2.6",
    "F_CLEF, -1.05, 2.5",
    "C_CLEF, -2, 2",
    "SHARP, -1.4, 1.4",
    "FLAT, -1.76, .7",
    "NATURAL, -1.36, 1.36",
    "REST_WHOLE, 0, .53",
    "REST_HALF, -.53, 0",
    "REST_QUARTER, -1.5, 1.5",
    "REST_8, -.7, 1",
    "FLAG_8_UP, 0, 3.25",
    "FLAG_8_DOWN, -3.25, 0",
    "TIME_CUT, -1.42, 1.42",
    "FINGER_3, -1.5, 0",
    "NUMERAL_V, -1.3, 0",
  })
  void signsStandWhereTheirOriginSays(Glyph glyph, double top, double bottom) {
    assertThat(glyph.box().top()).isCloseTo(top, within(.1));
    assertThat(glyph.box().bottom()).isCloseTo(bottom, within(.1));
  }

  @Test
  void figuresOfATimeSignatureAreTwoSpacesHigh() {
    for (int digit = 0; digit < 10; digit++) {
      assertThat(Glyph.time(digit).box().top()).isCloseTo(-1, within(ROUNDING));
      assertThat(Glyph.time(digit).box().bottom()).isCloseTo(1, within(ROUNDING));
    }
  }

  @Test
  void fingersAndItalicFiguresAreAsHighAsEachOther() {
    for (int finger = 0; finger < 6; finger++) {
      assertThat(Glyph.finger(finger).box().height()).isCloseTo(1.5, within(.05));
    }
    for (int digit = 0; digit < 10; digit++) {
      assertThat(Glyph.italic(digit).box().height()).isCloseTo(1.2, within(.05));
    }
  }

  @ParameterizedTest
  @EnumSource
  void everyShapeBeginsAtZeroAndEndsBeforeTheNext(Glyph glyph) {
    assertThat(glyph.box().left()).isCloseTo(0, within(ROUNDING));
    assertThat(glyph.advance()).isBetween(.5 * glyph.width(), glyph.width() + .3);
  }

  @ParameterizedTest
  @EnumSource
  void theBoxIsThatOfAGeneralLibrary(Glyph glyph) {
    var expected = AwtPath.flattened(glyph.path()).getBounds2D();
    Box box = glyph.box();
    assertThat(box.left()).isCloseTo(expected.getMinX(), within(1e-4));
    assertThat(box.top()).isCloseTo(expected.getMinY(), within(1e-4));
    assertThat(box.right()).isCloseTo(expected.getMaxX(), within(1e-4));
    assertThat(box.bottom()).isCloseTo(expected.getMaxY(), within(1e-4));
  }

  /** A hole drawn the wrong way round would be filled. */
  @ParameterizedTest
  @CsvSource({
    "HEAD_BLACK, .59, 0, true",
    "HEAD_HALF, .59, 0, false",
    "HEAD_WHOLE, .845, 0, false",
    "HEAD_DIAMOND_OPEN, .55, 0, false",
    "FLAT, .35, -.1, false",
    "NATURAL, .33, 0, false",
    "SHARP, .5, 0, false",
    "TIME_0, .86, 0, false",
    "TIME_4, .7, .1, false",
    "TIME_6, .77, .4, false",
    "TIME_8, .77, .5, false",
    "TIME_9, .75, -.4, false",
    "FINGER_0, .5, -.75, false",
    "FINGER_4, .5, -.65, false",
    "ITALIC_8, .4, -.3, false",
    "HARMONIC, .43, -.43, false",
    "THUMB, .42, -.98, false",
    "CODA, 1, -1, false",
    "G_CLEF, 1.3, 0, false",
    "G_CLEF, 1.64, 0, true",
  })
  void holesAreOpen(Glyph glyph, double x, double y, boolean filled) {
    assertThat(AwtPath.of(glyph.path()).contains(x, y)).isEqualTo(filled);
  }

  /** SMuFL's anchors of the black and half noteheads: (1.18, 0.168) and (0, -0.168), y upward. */
  @Test
  void stemsJoinTheSidesOfNoteheads() {
    for (Glyph head : EnumSet.of(Glyph.HEAD_BLACK, Glyph.HEAD_HALF)) {
      assertThat(head.stemUp().x()).isCloseTo(1.18, within(.01));
      assertThat(head.stemUp().y()).isCloseTo(-.168, within(.01));
      assertThat(head.stemDown().x()).isZero();
      assertThat(head.stemDown().y()).isCloseTo(.168, within(.01));
      Path2D shape = AwtPath.of(head.path());
      assertThat(shape.contains(head.stemUp().x() - EngravingDefaults.STEM / 2, -.168)).isTrue();
      assertThat(shape.contains(EngravingDefaults.STEM / 2, .168)).isTrue();
    }
  }

  @Test
  void signsAboveAndBelowMirrorEachOther() {
    assertThat(Glyph.FERMATA_BELOW.box().bottom()).isEqualTo(-Glyph.FERMATA_ABOVE.box().top());
    assertThat(Glyph.FERMATA_ABOVE.box().bottom()).isCloseTo(0, within(ROUNDING));
    assertThat(Glyph.MARCATO_BELOW.box().top()).isCloseTo(0, within(ROUNDING));
    assertThat(Glyph.STACCATISSIMO_BELOW.box().top()).isCloseTo(0, within(ROUNDING));
    assertThat(Glyph.STACCATISSIMO_ABOVE.box().bottom()).isCloseTo(0, within(ROUNDING));
  }

  /** A gap of a hair would show between two pieces of a line. */
  @Test
  void piecesOfWavyLinesOverlapALittle() {
    assertThat(Glyph.WAVE.width() - Glyph.WAVE.advance()).isBetween(.01, .05);
    assertThat(Glyph.ARPEGGIO.box().height() - 1).isBetween(.01, .05);
    assertThat(Glyph.ARPEGGIO.box().top()).isCloseTo(0, within(ROUNDING));
  }

  @Test
  void idsAreShortAndDistinct() {
    assertThat(Glyph.SHARP.id()).matches("g[0-9a-z]{1,2}");
    assertThat(Glyph.FLAG_16_DOWN.id()).isNotEqualTo(Glyph.SHARP.id());
    assertThat(Arrays.stream(Glyph.values()).map(Glyph::id)).doesNotHaveDuplicates();
  }
}
