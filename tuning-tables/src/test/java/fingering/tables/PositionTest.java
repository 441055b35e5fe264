package fingering.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Positions as players write them: common practice, no source. */
class PositionTest {
  @ParameterizedTest
  @CsvSource({
    "half, half, half",
    "½, half, half",
    "1/2, half, half",
    "0.5, half, half",
    "1, 1, 1st",
    "1st, 1, 1st",
    "2nd, 2, 2nd",
    "III, 3, 3rd",
    "iv, 4, 4th",
    "2½, 2½, 2½",
    "2.5, 2½, 2½",
    "2 1/2, 2½, 2½",
    "II½, 2½, 2½",
    "11, 11, 11th",
    "12th, 12, 12th",
    "XIII, 13, 13th",
    "22, 22, 22nd",
    "thumb, thumb, thumb",
    "T, thumb, thumb",
    "' 3RD ', 3, 3rd",
    "first, 1, 1st",
    "Third, 3, 3rd",
    "twelfth, 12, 12th",
    "thirteenth, 13, 13th",
    "3rd position, 3, 3rd",
    "half position, half, half",
    "Thumb Position, thumb, thumb",
    "pos. 3, 3, 3rd",
    "III pos., 3, 3rd",
    "position 2½, 2½, 2½"
  })
  void positionsAreReadAsPlayersWriteThem(String text, String data, String display) {
    assertThat(Position.parse(text)).hasToString(data);
    assertThat(Position.parse(text).display()).isEqualTo(display);
  }

  @Test
  void everyPositionIsReadBack() {
    assertThat(Position.range(Position.HALF, Position.THUMB))
        .hasSize(48)
        .doesNotHaveDuplicates()
        .allSatisfy(
            position -> {
              assertThat(Position.parse(position.toString())).isEqualTo(position);
              assertThat(Position.parse(position.display())).isEqualTo(position);
            });
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 0, 48, 49, Integer.MAX_VALUE})
  void numbersOutsideHalfTo23AndAHalfAreRefused(int halves) {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> Position.ofHalves(halves))
        .withMessageContaining("no position " + halves + "/2");
  }

  @Test
  void thumbPositionHasNoNumber() {
    assertThatExceptionOfType(FingeringException.class).isThrownBy(() -> Position.of(24));
    assertThat(Position.THUMB.halves()).isEmpty();
    assertThatExceptionOfType(IllegalStateException.class).isThrownBy(Position.THUMB::number);
    for (int halves = 1; halves <= 47; halves++) {
      assertThat(Position.ofHalves(halves)).isNotEqualTo(Position.THUMB).isLessThan(Position.THUMB);
    }
  }

  @Test
  void aRangeIncludesIntermediatePositions() {
    assertThat(Position.range(Position.FIRST, Position.THIRD))
        .extracting(Position::toString)
        .containsExactly("1", "1½", "2", "2½", "3");
    assertThat(Position.range(Position.of(23), Position.THUMB))
        .extracting(Position::toString)
        .containsExactly("23", "23½", "thumb");
    assertThat(Position.range(Position.THIRD, Position.FIRST)).isEmpty();
  }

  @Test
  void theNumberIsRoundedDown() {
    assertThat(Stream.of("half", "1", "2½", "12").map(Position::parse))
        .extracting(Position::number)
        .containsExactly(0, 1, 2, 12);
  }

  @Test
  void positionsRiseFromHalfToThumb() {
    List<Position> rising =
        Stream.of("half", "1", "2", "2½", "3", "3½", "7", "13", "thumb")
            .map(Position::parse)
            .toList();
    assertThat(rising).isSorted().doesNotHaveDuplicates();
    assertThat(Position.THIRD).isGreaterThan(Position.SECOND);
  }

  @Test
  void wholePositionsAreCountedFromFirst() {
    assertThat(Stream.of(1, 2, 12).map(Position::of))
        .extracting(Position::display)
        .containsExactly("1st", "2nd", "12th");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "0",
        "-1",
        "zero",
        "IIII",
        "IC",
        "24",
        "99",
        "1.25",
        "½½",
        "3.",
        "h",
        "fist",
        "third-finger",
        "position",
        "3rd position position",
        "one"
      })
  void textThatIsNotAPositionIsRefused(String text) {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> Position.parse(text))
        .withMessageContaining("'" + text + "'")
        .withMessageContaining("thumb");
  }

  @Test
  void romanNumeralsGoUpTo39() {
    assertThat(Stream.of(1, 4, 5, 9, 14, 39).map(RomanNumeral::of))
        .containsExactly("I", "IV", "V", "IX", "XIV", "XXXIX");
  }

  @Test
  void romanNumeralsOutside1To39AreRefused() {
    assertThatExceptionOfType(IllegalArgumentException.class).isThrownBy(() -> RomanNumeral.of(0));
    assertThatExceptionOfType(IllegalArgumentException.class).isThrownBy(() -> RomanNumeral.of(40));
  }
}
