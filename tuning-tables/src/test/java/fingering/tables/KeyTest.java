package fingering.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.common.collect.ImmutableList;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class KeyTest {
  // the circle of fifths, as in any primer of music; common practice, no source
  @ParameterizedTest
  @CsvSource({
    "C-major, 0, C D E F G A B",
    "D-major, 2, D E F# G A B C#",
    "E-major, 4, E F# G# A B C# D#",
    "F#-major, 6, F# G# A# B C# D# E#",
    "Bb-major, -2, Bb C D Eb F G A",
    "Db-major, -5, Db Eb F Gb Ab Bb C",
    "Cb-major, -7, Cb Db Eb Fb Gb Ab Bb",
    "A-minor, 0, A B C D E F G",
    "G-minor, -2, G A Bb C D Eb F",
    "C#-minor, 4, C# D# E F# G# A B"
  })
  void everyKeySpellsItsSevenNotes(String name, int signs, String notes) {
    Key key = Key.parse(name);

    assertThat(key.signs()).isEqualTo(signs);
    assertThat(letters(key)).isEqualTo(notes);
  }

  private static String letters(Key key) {
    return key.scale().stream()
        .map(pitch -> pitch.toString().replaceAll("\\d", ""))
        .collect(Collectors.joining(" "));
  }

  /** All major and minor keys with at most seven sharps or flats. */
  private static ImmutableList<Key> all() {
    ImmutableList.Builder<Key> keys = ImmutableList.builder();
    for (Key.Mode mode : Key.Mode.values()) {
      for (Letter letter : Letter.values()) {
        for (int alter = -1; alter <= 1; alter++) {
          try {
            keys.add(new Key(letter, alter, mode));
          } catch (FingeringException e) {
            assertThat(e).hasMessageContaining("seven sharps or flats");
          }
        }
      }
    }
    return keys.build();
  }

  // the circle of fifths, as in any primer of music; common practice, no source
  @Test
  void thereAreFifteenMajorAndFifteenMinorKeys() {
    assertThat(all()).hasSize(30);
  }

  @Test
  void everyKeyIsReadBack() {
    assertThat(all())
        .allSatisfy(
            key -> {
              assertThat(Key.parse(key.toString())).isEqualTo(key);
              assertThat(Key.parse(key.display())).isEqualTo(key);
            });
  }

  @Test
  void theNameOfAKeyHasTonicAndMode() {
    assertThat(Key.parse("bb-minor")).hasToString("Bb-minor");
    assertThat(Key.parse("f# major").display()).isEqualTo("F♯ major");
  }

  @ParameterizedTest
  @ValueSource(strings = {"Bb-major", "bb major", "B-flat-major", "B♭-Major", " b flat major "})
  void aKeyIsReadAsPlayersWriteIt(String text) {
    assertThat(Key.parse(text)).isEqualTo(new Key(Letter.B, -1, Key.Mode.MAJOR));
  }

  @Test
  void bMinorInLowerCaseIsTheLetterBNotAFlat() {
    assertThat(Key.parse("b-minor")).isEqualTo(new Key(Letter.B, 0, Key.Mode.MINOR));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "D", "H-dur", "D-lydian", "G#-major", "Fb-major", "Dbb-major"})
  void textThatIsNotAKeyIsRefusedWithExamples(String text) {
    assertThatThrownBy(() -> Key.parse(text))
        .isInstanceOf(FingeringException.class)
        .hasMessageContaining("'" + text + "'")
        .hasMessageContaining("D-major, Bb-major or F#-minor");
  }

  // the melodic minor scale; common practice, no source
  @Test
  void aMinorKeyRaisesItsSixthAndSeventhDegrees() {
    assertThat(Key.parse("G-minor").raised())
        .extracting(Pitch::toString)
        .containsExactly("E5", "F#5");
    assertThat(Key.parse("D-major").raised()).isEmpty();
  }

  @Test
  void aMidiNumberIsSpelledInTheKeyInAnyOctave() {
    Key key = Key.parse("F#-major");

    // E♯3 sounds as F3 = 53 (MIDI numbers: middle C is 60)
    assertThat(key.spelled(53)).contains(Pitch.parse("E#3"));
    assertThat(key.spelled(52)).isEmpty();
    assertThat(Key.parse("Cb-major").spelled(59)).contains(Pitch.parse("Cb4"));
    assertThat(Key.parse("G-minor").spelledRaised(66)).contains(Pitch.parse("F#4"));
  }
}
