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
    return Player.parse("imke.player", String.join("\n", lines));
  }

  @Test
  void aFileDescribesTheStudentInWords() {
    Player player =
        read(
            "# Imke",
            "",
            "  preset = beginner # she is nine",
            "instrument=viola",
            "size = 15.5",
            "Hand = small",
            "positions = half, 1 , 3rd",
            "patterns = 2–3, Augmented  Second",
            "extensions = fourth forward",
            "shifts = open string, rest");
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
  void ofAHeadingThatIsLeftOutNothingIsSaid() {
    assertThat(read("# nothing yet")).isEqualTo(Player.UNKNOWN);
    assertThat(read("positions = 1"))
        .isEqualTo(Player.UNKNOWN.withPositions(ImmutableSet.of(Position.FIRST)));
  }

  @Test
  void whatIsLearnedCanBeSaidOfAPlayerPieceByPiece() {
    Player player =
        Player.UNKNOWN
            .withPatterns(ImmutableSet.of(FingerPattern.SECOND_THIRD))
            .withExtensions(ImmutableSet.of(Extension.FIRST_BACK))
            .withShifts(ImmutableSet.of(ShiftKind.REST));
    assertThat(player)
        .isEqualTo(read("patterns = 2-3", "extensions = first back", "shifts = rest"));
  }

  @Test
  void aRangeOfPositionsHasAllBetweenItsEnds() {
    assertThat(read("positions = half-2").positions().orElseThrow())
        .containsExactly(Position.HALF, Position.FIRST, Position.ofHalves(3), Position.SECOND);
    assertThat(read("positions = 1, 3–4, thumb").positions().orElseThrow())
        .containsExactly(
            Position.FIRST, Position.THIRD, Position.ofHalves(7), Position.FOURTH, Position.THUMB);
  }

  @Test
  void noneIsAnAnswerToExtensionsAndShifts() {
    Player player = read("extensions = none", "shifts = none");
    assertThat(player.extensions().orElseThrow()).isEmpty();
    assertThat(player.shifts().orElseThrow()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          positions                | write a heading and what belongs to it, such as 'positions = 1, 3'
          = 1                      | write a heading and what belongs to it
          position = 1             | there is no heading 'position'; choose from preset, instrument,
          positions =              | nothing stands behind 'positions'; fill it in, or take it out
          positions = # later      | nothing stands behind 'positions'
          positions = 1,           | '' is not a position; write half, 1, 2½, 3 and so on (3rd, III and third too), or thumb
          positions = fist         | 'fist' is not a position; write half, 1, 2
          positions = 3-1          | '3-1' is no range of positions; write the lower one first
          positions = 1-2-3        | '1-2-3' is no range of positions
          patterns = 2-4           | '2-4' is no finger pattern; choose from 0-1, 1-2, 2-3, 3-4, apart,
          patterns = none          | 'none' is no finger pattern
          extensions = back        | 'back' is no extension; choose from first back, fourth forward, or write none
          shifts = rest, thumb     | 'thumb' is no shift; choose from rest, open string, same finger,
          shifts = rest, none      | 'none' is no shift
          preset = loud            | there are no weights 'loud'; choose one of common-practice, beginner
          instrument = banjo       | no instrument 'banjo'; choose violin, viola, cello, bass
          hand = huge              | 'huge' is not a hand; write small, medium, large
          """)
  void whatCannotBeReadIsNamedWithItsLineAndTheWordsAllowed(String line, String why) {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> read("# Imke", "", line))
        .withMessageStartingWith("imke.player, line 3: ")
        .withMessageContaining(why);
  }

  @Test
  void aHeadingThatStandsTwiceIsRefused() {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> read("shifts = rest", "shifts = slur"))
        .withMessage(
            "imke.player, line 2: the heading 'shifts' stands twice; put both into one line");
  }

  @Test
  void wordsOfAnotherInstrumentAreRefusedWhereTheInstrumentIsSaid() {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> read("patterns = closed", "instrument = violin"))
        .withMessageStartingWith(
            "imke.player, line 1: 'closed' is no finger pattern of the violin;")
        .withMessageNotContainingAny("extended back");
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> read("patterns = 2-3", "instrument = cello"))
        .withMessageContaining("choose from closed, extended back, extended forward, thumb");
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> read("size = 9/8", "instrument = cello"))
        .withMessageStartingWith("imke.player, line 1: no size '9/8' of the cello");
    assertThat(read("size = 9/8").size()).contains("9/8");
  }
}
