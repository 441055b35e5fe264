package fingering.musicxml.words;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.musicxml.words.PositionWords.Instruction;
import fingering.musicxml.words.PositionWords.Kind;
import fingering.tables.Position;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Words for a position as teachers write them into parts: common practice, no source. */
class PositionWordsTest {
  private static Optional<Instruction> read(String words) {
    return PositionWords.standard().read(words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "3rd pos. | 3",
        "3rd position | 3",
        "(in 3rd Position) | 3",
        "3 pos | 3",
        "III pos. | 3",
        "Third position | 3",
        "Pos. 3 | 3",
        "Position III | 3",
        "III. Lage | 3",
        "3. Lage | 3",
        "dritte Lage | 3",
        "in der ersten Lage | 1",
        "Lage 5 | 5",
        "3e position | 3",
        "3ème pos. | 3",
        "IIIe position | 3",
        "troisième position | 3",
        "3a posizione | 3",
        "3ª posizione | 3",
        "terza posizione | 3",
        "3ª posición | 3",
        "tercera posición | 3",
        "half pos. | half",
        "½ position | half",
        "1/2 pos. | half",
        "halbe Lage | half",
        "demi-position | half",
        "mezza posizione | half",
        "2½ pos. | 2½",
        "II½ Lage | 2½",
        "dolce, 5th pos. | 5",
        "7th pos., sul G | 7"
      })
  void wordsNameAPosition(String words, String position) {
    assertThat(read(words))
        .contains(new Instruction(Kind.POSITION, Optional.of(Position.parse(position))));
  }

  @ParameterizedTest
  @ValueSource(strings = {"thumb on D", "thumb pos.", "Daumenlage", "avec le pouce", "capotasto"})
  void theThumbEndsThePreviousPositionAndNamesNone(String words) {
    assertThat(read(words)).contains(new Instruction(Kind.THUMB, Optional.empty()));
  }

  @ParameterizedTest
  @CsvSource({"III, 3", "IV., 4", "(I), 1", "VII, 7"})
  void aRomanNumeralAloneMayMeanAString(String words, String number) {
    assertThat(read(words))
        .contains(new Instruction(Kind.NUMERAL, Optional.of(Position.parse(number))));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2nd or 3rd pos.",
        "1st-3rd pos.",
        "2nd/3rd position",
        "pos. 2-3",
        "Pos. II/III",
        "3/4 pos.",
        "1/2 or 1st pos.",
        "1.-3. Lage",
        "2. und 3. Lage",
        "2nd pos. or 3rd"
      })
  void twoPositionsAreAChoice(String words) {
    assertThat(read(words)).contains(new Instruction(Kind.CHOICE, Optional.empty()));
  }

  @Test
  void restezKeepsTheHandUnlessAPositionIsNamed() {
    assertThat(read("restez")).contains(new Instruction(Kind.STAY, Optional.empty()));
    assertThat(read("(Restez!)")).contains(new Instruction(Kind.STAY, Optional.empty()));
    assertThat(read("restez à la 3e position"))
        .contains(new Instruction(Kind.POSITION, Optional.of(Position.THIRD)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "3",
        "v",
        "x",
        "in thirds",
        "3rd time only",
        "sul III",
        "III corda",
        "position naturelle",
        "pos. ord.",
        "in hoher Lage",
        "0th pos.",
        "14. Lage",
        "half",
        "III ed ultimo"
      })
  void otherWordsNameNone(String words) {
    assertThat(read(words)).isEmpty();
  }
}
