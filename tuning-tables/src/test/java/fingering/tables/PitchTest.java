package fingering.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PitchTest {
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void everyPitchIsReadBack(
      @ForAll Letter letter,
      @ForAll @IntRange(min = -3, max = 3) int alter,
      @ForAll @IntRange(min = -1, max = 10) int octave) {
    Pitch pitch = new Pitch(letter, alter, octave);
    assertThat(Pitch.parse(pitch.toString())).isEqualTo(pitch);
    assertThat(Pitch.parse(pitch.display())).isEqualTo(pitch);
  }

  // MIDI 1.0 specification, from memory: middle C is key 60, the tuning A is 69, the keys 0 to 127.
  @ParameterizedTest
  @CsvSource({"C4, 60", "A4, 69", "C-1, 0", "G9, 127", "B#3, 60", "Cb4, 59", "Fx4, 67"})
  void midiCountsSemitonesFromMiddleC(String spelling, int midi) {
    assertThat(Pitch.parse(spelling).midi()).isEqualTo(midi);
  }

  // ISO 16:1975 sets A4 at 440 Hz; the others follow by equal temperament, 2^(n/12).
  @ParameterizedTest
  @CsvSource({"A4, 440", "C4, 261.626", "E2, 82.407", "G3, 195.998", "E5, 659.255", "A3, 220"})
  void frequenciesAreInEqualTemperamentFromA4(String spelling, double hertz) {
    assertThat(Pitch.parse(spelling).hertz()).isCloseTo(hertz, within(0.001));
  }

  @Property(generation = GenerationMode.EXHAUSTIVE)
  void anOctaveUpDoublesTheFrequency(
      @ForAll Letter letter,
      @ForAll @IntRange(min = -2, max = 2) int alter,
      @ForAll @IntRange(min = 0, max = 8) int octave) {
    Pitch pitch = new Pitch(letter, alter, octave);
    assertThat(pitch.plusOctaves(1).hertz() / pitch.hertz()).isCloseTo(2, within(1e-12));
    assertThat(pitch.plusOctaves(1).letterNumber()).isEqualTo(pitch.letterNumber() + 7);
  }

  // common practice, no source
  @Test
  void gSharpAndAFlatAreDifferentPitchesWithOneMidiNumber() {
    Pitch sharp = Pitch.parse("G#4");
    Pitch flat = Pitch.parse("Ab4");
    assertThat(sharp.midi()).isEqualTo(flat.midi());
    assertThat(sharp).isNotEqualTo(flat);
    assertThat(flat.letterNumber()).isEqualTo(sharp.letterNumber() + 1);
  }

  @Test
  void bFlatIsReadWithALowerCaseBAndWithASign() {
    assertThat(Pitch.parse("bb3")).isEqualTo(new Pitch(Letter.B, -1, 3));
    assertThat(Pitch.parse(" B♭3 ")).isEqualTo(new Pitch(Letter.B, -1, 3));
  }

  @Test
  void anOctaveOutOfRangeIsRefusedWithTheTextAndAHyphenWithTheFlat() {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> Pitch.parse("b-4"))
        .withMessage("'b-4' has the octave -4, not -1 to 10; a flat is written b, such as Bb4");
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> Pitch.parse("F#11"))
        .withMessage("'F#11' has the octave 11, not -1 to 10");
  }

  @Test
  void accidentalsAreSignsForDisplayAndAsciiInText() {
    assertThat(Pitch.parse("Bb3").display()).isEqualTo("B♭3");
    assertThat(Pitch.parse("F♯5")).hasToString("F#5");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "H4", "C", "4", "C4#", "C##b#4", "C11", "C 4", "C-2", "Cxx4"})
  void textThatIsNotAPitchIsRefused(String text) {
    assertThatExceptionOfType(FingeringException.class).isThrownBy(() -> Pitch.parse(text));
  }

  @Test
  void theMessageShowsTheTextAndTheForm() {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> Pitch.parse("H4"))
        .withMessageContaining("'H4'")
        .withMessageContaining("F#4");
  }
}
