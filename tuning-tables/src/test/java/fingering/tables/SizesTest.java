package fingering.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** String lengths and reaches: common practice, no source. */
class SizesTest {
  private static final Instruments KNOWN = Instruments.standard();

  private static Size size(String instrument, String name) {
    return KNOWN.size(KNOWN.named(instrument), name);
  }

  @ParameterizedTest
  @CsvSource({"violin, 4/4, 328", "viola, 16, 375", "cello, 4/4, 690", "bass, 3/4, 1060"})
  void theUsualSizeIsThatOfTheInstrument(String id, String name, double length) {
    Instrument instrument = KNOWN.named(id);
    assertThat(instrument.size()).isEqualTo(name);
    assertThat(size(id, name).stringLength())
        .isEqualTo(length)
        .isEqualTo(instrument.stringLength());
    assertThat(instrument.sized(size(id, name))).isEqualTo(instrument);
  }

  @ParameterizedTest
  @CsvSource({
    "violin, 4/4 7/8 3/4 1/2 1/4 1/8",
    "viola, 16.5 16 15.5 15 14 13 12",
    "cello, 4/4 7/8 3/4 1/2 1/4",
    "bass, 4/4 3/4 1/2 1/4"
  })
  void theSizesAreListedLargestFirst(String id, String names) {
    assertThat(KNOWN.sizes(KNOWN.named(id)).stream().map(Size::name))
        .containsExactly(names.split(" "));
  }

  @Test
  void aSmallerSizeHasAShorterStringAndNoLargerReach() {
    for (Instrument instrument : KNOWN.all()) {
      for (int i = 1; i < KNOWN.sizes(instrument).size(); i++) {
        Size larger = KNOWN.sizes(instrument).get(i - 1);
        Size smaller = KNOWN.sizes(instrument).get(i);
        assertThat(smaller.stringLength()).isLessThan(larger.stringLength());
        assertThat(smaller.reach()).isLessThanOrEqualTo(larger.reach());
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"violin, 4/4, 105", "viola, 15, 105", "cello, 4/4, 140", "bass, 4/4, 140"})
  void sizesForAdultsHaveAnAdultReach(String id, String name, double reach) {
    assertThat(size(id, name).reach()).isEqualTo(reach);
  }

  @ParameterizedTest
  @ValueSource(strings = {"violin", "cello", "bass"})
  void inSmallerSizesTheReachIsProportionalToTheString(String id) {
    Instrument usual = KNOWN.named(id);
    assertThat(KNOWN.sizes(usual))
        .filteredOn(size -> size.reach() < usual.reach())
        .isNotEmpty()
        .allSatisfy(
            size ->
                assertThat(size.reach() / size.stringLength())
                    .isCloseTo(usual.reach() / usual.stringLength(), withinPercentage(1)));
  }

  @Test
  void theFingerboardIsProportionalToTheString() {
    Instrument violin = KNOWN.named("violin");
    Instrument half = violin.sized(size("violin", "1/2"));
    assertThat(half.fingerboardLength() / half.stringLength())
        .isCloseTo(violin.fingerboardLength() / violin.stringLength(), within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(strings = {"610mm", "610 mm", " 610MM ", "610.0mm"})
  void aSizeCanBeALengthInMillimetres(String text) {
    Size size = size("cello", text);
    assertThat(size.instrument()).isEqualTo("cello");
    assertThat(size.stringLength()).isEqualTo(610);
    assertThat(size.name()).matches("610(\\.0)?mm");
  }

  @Test
  void theReachIsInterpolatedBetweenSizes() {
    // 3/4: 620 mm, 126 mm; 1/2: 550 mm, 112 mm
    assertThat(size("cello", "585mm").reach()).isCloseTo(119, within(1e-9));
    assertThat(size("cello", "620mm").reach()).isEqualTo(126);
  }

  @Test
  void theReachIsProportionalBelowTheSmallestSizeAndConstantAboveTheLargest() {
    assertThat(size("cello", "441mm").reach()).isCloseTo(90, within(1e-9));
    assertThat(size("viola", "420mm").reach()).isEqualTo(105);
  }

  @Property(generation = GenerationMode.EXHAUSTIVE)
  void theReachNeverDecreasesWithTheLength(@ForAll @IntRange(min = 345, max = 1034) int length) {
    assertThat(size("cello", length + "mm").reach())
        .isLessThanOrEqualTo(size("cello", length + 1 + "mm").reach());
  }

  @ParameterizedTest
  @ValueSource(strings = {"164mm", "492mm"})
  void halfAndOneAndAHalfTimesTheUsualLengthAreAccepted(String length) {
    assertThat(size("violin", length).name()).isEqualTo(length);
  }

  @ParameterizedTest
  @ValueSource(strings = {"163mm", "493mm", "0mm", "99999mm"})
  void lengthsOutsideTheRangeAreRefused(String length) {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> size("violin", length))
        .withMessage(
            "a violin has no string of %s mm; give 164 to 492 mm"
                .formatted(length.replace("mm", "")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"5/4", "", "mm", "-610mm", "1e3mm", "610", "610 cm", "NaNmm"})
  void anUnknownSizeIsRefusedWithTheChoices(String name) {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> size("cello", name))
        .withMessage(
            "no size '%s' of the cello; choose 4/4, 7/8, 3/4, 1/2, 1/4, or a string length such as 690mm"
                .formatted(name));
  }

  @Test
  void aSizeOfAnotherInstrumentIsRefused() {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> KNOWN.named("viola").sized(size("cello", "1/2")))
        .withMessageContaining("cello")
        .withMessageContaining("viola");
  }
}
