package fingering.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class PositionNamesTest {
  private static String names(String instrument) {
    return PositionNames.of(Instruments.standard().named(instrument))
        .bySemitone()
        .tailMap(1)
        .values()
        .stream()
        .map(Position::toString)
        .collect(Collectors.joining(" "));
  }

  // F. Simandl, New Method for the Double Bass, from memory
  @Test
  void simandlNamesABassPositionForEachSemitone() {
    assertThat(names("bass")).isEqualTo("half 1 2 2½ 3 3½ 4 5 5½ 6 6½ 7");
  }

  // common practice, no source; on the A string: 1st on B, 2nd on C or C♯, 3rd on D, 4th on E
  @Test
  void celloPositionsDependOnTheFirstFingerOfTheClosedHand() {
    assertThat(names("cello")).isEqualTo("half 1 2 2 3 3 4 5 5 6 6 7");
  }

  // common practice, no source
  @Test
  void violinAndViolaHaveNoPositionTable() {
    assertThat(names("violin")).isEmpty();
    assertThat(names("viola")).isEmpty();
  }

  @Test
  void noPositionIsAtTheNut() {
    assertThat(PositionNames.of(Instruments.standard().named("bass")).at(0)).isEmpty();
    assertThat(PositionNames.of(Instruments.standard().named("bass")).at(4))
        .contains(Position.parse("2½"));
  }

  // common practice, no source
  @Test
  void celloPositionsOnTwoSemitonesAreLoweredOrRaised() {
    PositionNames cello = PositionNames.of(Instruments.standard().named("cello"));
    assertThat(cello.remark(3)).isEqualTo("lowered");
    assertThat(cello.remark(4)).isEmpty();
    assertThat(cello.remark(6)).isEqualTo("raised");
  }
}
