package fingering.fingerboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Hand sizes: common practice, no source. */
class LeftHandTest {
  @ParameterizedTest
  @CsvSource({
    "small, violin, 96.6",
    "medium, violin, 105",
    "large, violin, 113.4",
    "small, cello, 128.8",
    "medium, cello, 140",
    "large, cello, 151.2",
    "large, bass, 151.2",
    "Large, viola, 113.4",
    "' SMALL ', viola, 96.6"
  })
  void theReachIsRelativeToThatOfTheInstrument(String hand, String on, double millimetres) {
    Instrument instrument = Instruments.standard().named(on);
    assertThat(LeftHand.parse(hand).reach(instrument)).isCloseTo(millimetres, within(1e-9));
  }

  @Test
  void theReachDependsOnTheSizeOfTheInstrument() {
    Instruments known = Instruments.standard();
    Instrument half = known.named("cello").sized(known.size(known.named("cello"), "1/2"));
    assertThat(LeftHand.MEDIUM.reach(half)).isEqualTo(112);
    assertThat(LeftHand.LARGE.reach(half)).isCloseTo(120.96, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"102mm, 102", "102 mm, 102", "98.5mm, 98.5", "40, 40", "220MM, 220", "140.0, 140"})
  void aMeasuredReachIsTheSameOnEveryInstrument(String text, double millimetres) {
    for (Instrument instrument : Instruments.standard().all()) {
      assertThat(LeftHand.parse(text).reach(instrument)).isEqualTo(millimetres);
    }
  }

  @Property(tries = 100)
  void everyReachIsRead(@ForAll @IntRange(min = 400, max = 2200) int tenths) {
    double millimetres = tenths / 10.0;
    LeftHand hand = LeftHand.parse(millimetres + "mm");
    assertThat(hand.millimetres()).hasValue(millimetres);
    assertThat(LeftHand.parse(hand.millimetres().getAsDouble() + " mm")).isEqualTo(hand);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "tiny",
        "XL",
        "39mm",
        "39.9",
        "220.1mm",
        "221",
        "9",
        "1000mm",
        "10cm",
        "-100mm",
        "102mmm",
        "102.55mm",
        "small 100mm",
        "1e2",
        "NaN",
        "١٠٢"
      })
  void textThatIsNotAHandIsRefusedWithTheChoices(String text) {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> LeftHand.parse(text))
        .withMessageContaining("'" + text + "'")
        .withMessageContaining("small, medium, large")
        .withMessageContaining("40 to 220 mm");
  }

  @Test
  void aReachThatIsNotAboveZeroIsRefused() {
    for (double reach : new double[] {0, -1, Double.NaN}) {
      assertThatExceptionOfType(IllegalArgumentException.class)
          .isThrownBy(() -> new LeftHand(reach, OptionalDouble.empty(), false, false));
      assertThatExceptionOfType(IllegalArgumentException.class)
          .isThrownBy(() -> new LeftHand(1, OptionalDouble.of(reach), false, false));
    }
  }

  @Test
  void techniquesAreIndependentOfTheReach() {
    LeftHand hand = LeftHand.parse("130mm").withFourFingers(true).withLowThumb(true);
    assertThat(hand.fourFingers()).isTrue();
    assertThat(hand.lowThumb()).isTrue();
    assertThat(hand.millimetres()).hasValue(130);
    assertThat(hand.withFourFingers(false).withLowThumb(false)).isEqualTo(LeftHand.parse("130mm"));
  }

  @Test
  void theDefaultIsAMediumHandWithOneTwoFourFingering() {
    assertThat(LeftHand.parse("medium")).isEqualTo(LeftHand.MEDIUM);
    assertThat(LeftHand.MEDIUM.fourFingers()).isFalse();
    assertThat(LeftHand.MEDIUM.lowThumb()).isFalse();
    for (Instrument instrument : Instruments.standard().all()) {
      assertThat(Fingerboard.of(instrument).frames())
          .isEqualTo(Fingerboard.of(instrument, LeftHand.MEDIUM).frames());
    }
  }
}
