package fingering.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class OpenStringTest {
  // names of the intervals: S. Kostka, D. Payne, Tonal Harmony, from memory
  @ParameterizedTest
  @CsvSource({
    "0, G3", "1, Ab3", "2, A3", "3, Bb3", "4, B3", "5, C4", "6, C#4", "7, D4", "8, Eb4", "9, E4",
    "10, F4", "11, F#4", "12, G4", "14, A4", "19, D5", "24, G5"
  })
  void aNoteAboveTheOpenStringHasTheSpellingOfItsInterval(int semitones, String note) {
    assertThat(new OpenString(4, Pitch.parse("G3")).above(semitones)).hasToString(note);
  }

  @Test
  void aNoteOnAnExtensionHasTheSpellingOfItsInterval() {
    OpenString extended = new OpenString(4, Pitch.parse("E1"), Pitch.parse("C1"));
    assertThat(extended.above(-4)).hasToString("C1");
  }

  // common practice, no source: string numbers in print
  @ParameterizedTest
  @ValueSource(ints = {1, 8})
  void stringsAreNumberedFromOneToEight(int number) {
    assertThat(new OpenString(number, Pitch.parse("A3")).number()).isEqualTo(number);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 9})
  void otherStringNumbersAreRefused(int number) {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> new OpenString(number, Pitch.parse("A3")))
        .withMessageStartingWith("string number " + number);
  }

  @Test
  void anExtensionGoesDownAnOctaveAtMost() {
    Pitch open = Pitch.parse("E2");
    assertThat(new OpenString(4, open, Pitch.parse("E1")).lowest()).hasToString("E1");
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> new OpenString(4, open, Pitch.parse("D#1")))
        .withMessageContaining("an octave at most");
  }
}
