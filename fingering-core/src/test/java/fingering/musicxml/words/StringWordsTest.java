package fingering.musicxml.words;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.musicxml.words.StringWords.Instruction;
import fingering.musicxml.words.StringWords.Kind;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Words as they are printed in parts. The forms marked A are from S. Adler, The Study of
 * Orchestration (from memory); the others are common practice, no source.
 */
class StringWordsTest {
  private static List<Instruction> read(String words) {
    return StringWords.standard().read(words, false);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "sul G | G", // A
        "Sul G.   | G",
        "SUL D | D",
        "(sul A) | A",
        "sul g | G",
        "sul C - - - - | C",
        "sull'A | A",
        "sul sol | G",
        "sul La | A",
        "sul re, molto vibrato | D",
        "sul IV | 4",
        "sul III | 3",
        "espr., sul D | D",
        "sulla IV | 4",
        "4a corda | 4", // A
        "4ª corda | 4",
        "IVa corda | 4",
        "IV corda | 4",
        "sulla quarta corda | 4",
        "sulla 3a corda | 3",
        "2da corda | 2",
        "IIIª C. | 3",
        "corda di sol | G",
        "sur la 4e corde | 4", // A
        "IVme corde | 4",
        "4ème corde | 4",
        "3 rd corde | 3",
        "4 a corda | 4",
        "quatrième corde | 4",
        "sur la corde de sol | G", // A
        "corde d'ut | C",
        "sur la corde de ré | D",
        "chanterelle | 1",
        "auf G | G",
        "auf der G-Saite | G", // A
        "G-Saite | G",
        "g-Saite | G",
        "D Saite | D",
        "4. Saite | 4",
        "auf der IV. Saite | 4",
        "auf der vierten Saite | 4",
        "on the G string | G", // A
        "G string | G",
        "on D | D",
        "4th string | 4",
        "on the third string | 3",
        "3a cuerda | 3",
        "Ⅳ corda | 4",
      })
  void wordsNameOneString(String words, String string) {
    assertThat(read(words)).containsExactly(new Instruction(Kind.STRING, string));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "con sordino",
        "stringendo",
        "string.",
        "una corda",
        "tre corde",
        "a 2 corde",
        "a due corde",
        "sopra una corda",
        "IV.",
        "III",
        "II. Menuetto",
        "IV. Finale",
        "II",
        "on a string",
        "a string of pearls",
        "sur la",
        "auf Wiedersehen",
        "solo",
        "G. P.",
        "D. C. al fine",
        "sul",
        "sulla scena",
        "corda",
        "A tempo",
        ""
      })
  void otherWordsNameNone(String words) {
    assertThat(read(words)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sul pont.",
        "sul ponticello",
        "Sul Tasto",
        "sulla tastiera",
        "sur la touche",
        "am Steg",
        "am Griffbrett",
        "auf dem Griffbrett",
        "flautando",
        "col legno"
      })
  void aPlaceOfTheBowIsNotAString(String words) {
    assertThat(read(words)).extracting(Instruction::kind).containsExactly(Kind.PLACE);
  }

  @ParameterizedTest
  @ValueSource(strings = {"ord.", "nat.", "naturale", "modo ordinario", "gewöhnlich", "pos. nat."})
  void wordsReturnToNormal(String words) {
    assertThat(read(words)).extracting(Instruction::kind).containsExactly(Kind.USUAL);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "loco",
        "tutte le corde",
        "auf allen Saiten",
        "sul D e G",
        "sul G/D",
        "sul III + IV"
      })
  void wordsFreeStringsOrLeaveAChoice(String words) {
    assertThat(read(words)).extracting(Instruction::kind).containsExactly(Kind.ENDS);
  }

  @Test
  void severalInstructionsInOneLineAreReadInOrder() {
    assertThat(read("arco, sul D, sul pont."))
        .extracting(Instruction::kind)
        .containsExactly(Kind.BOW, Kind.STRING, Kind.PLACE);
  }

  // A bare numeral is a movement as often as a string.
  @Test
  void aBareNumeralIsAStringIfALineBeginsAtIt() {
    StringWords words = StringWords.standard();
    assertThat(words.read("IV", true)).containsExactly(new Instruction(Kind.STRING, "4"));
    assertThat(words.read(" III  ", true)).containsExactly(new Instruction(Kind.STRING, "3"));
    assertThat(words.read("cresc.", true)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"thumb on D", "Daumen auf A"})
  void theNoteUnderTheThumbIsNotAString(String words) {
    assertThat(read(words)).extracting(Instruction::kind).containsExactly(Kind.THUMB);
  }
}
