package fingering.player;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.google.common.collect.ImmutableSet;
import fingering.fingerboard.LeftHand;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Position;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlayerTest {
  private static Player read(String... lines) {
    return Player.parse("imke.yaml", String.join("\n", lines));
  }

  @Test
  void aFileDescribesTheStudentInWords() {
    Player player =
        read(
            "# Imke",
            "",
            "preset: beginner # she is nine",
            "instrument: viola",
            "size: 15.5",
            "hand: small",
            "positions: [half, 1 , 3rd]",
            "patterns: 2–3, Augmented  Second",
            "extensions: fourth forward",
            "shifts: open string, rest");
    assertThat(player.preset()).contains("beginner");
    assertThat(player.instrument().map(Instrument::id)).contains("viola");
    assertThat(player.size()).contains("15.5");
    assertThat(player.hand()).contains(LeftHand.SMALL);
    assertThat(player.positions().orElseThrow())
        .containsExactlyInAnyOrder(Position.HALF, Position.FIRST, Position.THIRD);
    assertThat(player.patterns().orElseThrow())
        .containsExactlyInAnyOrder(FingerPattern.SECOND_THIRD, FingerPattern.AUGMENTED_SECOND);
    assertThat(player.extensions().orElseThrow()).containsExactly(Extension.FOURTH_FORWARD);
    assertThat(player.shifts().orElseThrow())
        .containsExactlyInAnyOrder(ShiftKind.OPEN_STRING, ShiftKind.REST);
  }

  @Test
  void listsMayBeTypedWithCommasOnSeveralLinesOrAsJson() {
    Player player = read("positions: [1, 3]", "shifts: [open string, rest]");
    assertThat(read("positions: 1, 3", "shifts: open string, rest")).isEqualTo(player);
    assertThat(read("positions:", "  - 1", "  - 3", "shifts:", "- open string", "- rest"))
        .isEqualTo(player);
    assertThat(read("{\"positions\": [1, \"3\"], \"shifts\": [\"open string\", \"rest\"]}"))
        .isEqualTo(player);
  }

  @Test
  void aKeyThatIsLeftOutSaysNothing() {
    assertThat(read("positions: 1"))
        .isEqualTo(Player.UNKNOWN.withPositions(ImmutableSet.of(Position.FIRST)));
  }

  @Test
  void whatIsLearnedCanBeSaidOfAPlayerPieceByPiece() {
    Player player =
        Player.UNKNOWN
            .withPatterns(ImmutableSet.of(FingerPattern.SECOND_THIRD))
            .withExtensions(ImmutableSet.of(Extension.FIRST_BACK))
            .withShifts(ImmutableSet.of(ShiftKind.REST));
    assertThat(player).isEqualTo(read("patterns: 2-3", "extensions: first back", "shifts: rest"));
  }

  @Test
  void aRangeOfPositionsHasAllBetweenItsEnds() {
    assertThat(read("positions: half-2").positions().orElseThrow())
        .containsExactly(Position.HALF, Position.FIRST, Position.ofHalves(3), Position.SECOND);
    assertThat(read("positions: 1, 3–4, thumb").positions().orElseThrow())
        .containsExactly(
            Position.FIRST, Position.THIRD, Position.ofHalves(7), Position.FOURTH, Position.THUMB);
  }

  @Test
  void noneIsAnAnswerToExtensionsAndShifts() {
    Player player = read("extensions: none", "shifts: none");
    assertThat(player.extensions().orElseThrow()).isEmpty();
    assertThat(player.shifts().orElseThrow()).isEmpty();
    assertThat(read("extensions: []", "shifts: [none]")).isEqualTo(player);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          positions                | a player file consists of keys with values, such as 'preset: intermediate'
          positions = 1            | write a colon after the key, 'positions: ', instead of '='
          : 1                      | a key is missing before the colon; write one
          position: 1              | there is no key 'position'; did you mean 'positions', such as 'positions: [1, 3]'?
          Hand: small              | there is no key 'Hand'; did you mean 'hand', such as 'hand: medium'?
          fruit: 1                 | there is no key 'fruit' in a player file; choose from preset, instrument,
          positions:               | 'positions' has no value; fill it in, such as 'positions: [1, 3]', or remove it
          positions: # later       | 'positions' has no value
          positions: []            | 'positions' has one value or a list of values, such as 'positions: [1, 3]'
          positions: {first: 1}    | 'positions' has one value or a list of values, such as 'positions: [1, 3]'
          preset: [beginner]       | 'preset' has a single value, such as 'preset: intermediate'
          positions: 1,            | 'positions' has an empty item; fill it in, or remove its comma
          positions: fist          | 'fist' is not a position; write half, 1, 2½, 3 and so on (3rd, III and third too), or thumb
          positions: 3-1           | '3-1' is not a range of positions; write the lower one first
          positions: 1-2-3         | '1-2-3' is not a range of positions
          patterns: 2-4            | '2-4' is not a finger pattern; choose one of 0-1, 1-2, 2-3, 3-4, apart,
          patterns: none           | 'none' is not a finger pattern
          extensions: back         | 'back' is not an extension; choose one of first back, fourth forward, none
          shifts: rest, thumb      | 'thumb' is not a shift; choose one of rest, open string, same finger,
          shifts: [rest, none]     | 'none' is not a shift
          preset: loud             | there are no weights 'loud'; choose one of common-practice, beginner
          instrument: banjo        | no instrument 'banjo'; choose one of violin, viola, cello, bass
          hand: huge               | 'huge' is not a hand; write small, medium, large
          """)
  void whatCannotBeReadIsNamedWithItsLineAndTheWordsAllowed(String line, String why) {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> read("# Imke", "", line))
        .withMessageStartingWith("imke.yaml, line 3: ")
        .withMessageContaining(why);
  }

  @Test
  void anItemOfAListIsNamedByItsOwnLine() {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> read("positions:", "  - 1", "  - fist"))
        .withMessageStartingWith("imke.yaml, line 3: 'fist' is not a position");
  }

  @Test
  void aKeyThatIsGivenTwiceIsRefused() {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> read("shifts: rest", "shifts: slur"))
        .withMessage(
            "imke.yaml, line 2: the key 'shifts' is given twice, first in line 1; write it once");
  }

  @Test
  void wordsOfAnotherInstrumentAreRefusedWhereTheInstrumentIsSaid() {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> read("patterns: closed", "instrument: violin"))
        .withMessageStartingWith(
            "imke.yaml, line 1: 'closed' is not a finger pattern of the violin;")
        .withMessageNotContainingAny("extended back");
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> read("patterns: 2-3", "instrument: cello"))
        .withMessageContaining("choose one of closed, extended back, extended forward, thumb");
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> read("size: 9/8", "instrument: cello"))
        .withMessageStartingWith("imke.yaml, line 1: no size '9/8' of the cello");
    assertThat(read("size: 9/8").size()).contains("9/8");
  }
}
