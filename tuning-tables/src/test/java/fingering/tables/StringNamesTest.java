package fingering.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.common.collect.ImmutableList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StringNamesTest {
  private static final Instrument VIOLA = Instruments.standard().named("viola");

  @ParameterizedTest
  @ValueSource(
      strings = {"C", "c", "IV", "iv", "4", "sul C", "sul-C", "sulC", "C string", "IV corda"})
  void aStringIsFoundByLetterNumeralOrNumber(String name) {
    assertThat(StringNames.of(VIOLA).find(name).pitch()).isEqualTo(Pitch.parse("C3"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"E", "V", "5", "0", "", "sul", "sul pont."})
  void anUnknownStringIsRefusedWithTheChoices(String name) {
    assertThatThrownBy(() -> StringNames.of(VIOLA).find(name))
        .isInstanceOf(FingeringException.class)
        .hasMessage(
            "The viola has no string '" + name + "'; choose IV (C), III (G), II (D), I (A).");
  }

  // A–E–A–E, an old tuning of the violin; common practice, no source
  @Test
  void aLetterOfTwoStringsIsRefused() {
    Instrument crossed =
        Instruments.standard()
            .named("violin")
            .tuned(
                new Tuning(
                    "violin",
                    "crossed",
                    ImmutableList.of(
                        new OpenString(1, Pitch.parse("E5")),
                        new OpenString(2, Pitch.parse("A4")),
                        new OpenString(3, Pitch.parse("E4")),
                        new OpenString(4, Pitch.parse("A3")))));

    assertThatThrownBy(() -> StringNames.of(crossed).find("A"))
        .hasMessageContaining("Several strings are called 'A'");
    assertThat(StringNames.of(crossed).find("IV").pitch()).isEqualTo(Pitch.parse("A3"));
  }

  @Test
  void anAccidentalOfAStringCanBeTypedInAscii() {
    Instrument solo =
        new Instrument(
            "bass",
            "Double bass",
            Instrument.HandKind.BASS,
            "solo",
            "3/4",
            ImmutableList.of(
                new OpenString(1, Pitch.parse("A2")), new OpenString(2, Pitch.parse("F#1"))),
            1060,
            850,
            140,
            -1);

    assertThat(StringNames.of(solo).find("f#").number()).isEqualTo(2);
  }
}
