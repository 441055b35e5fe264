package fingering.fingerboard;

import static fingering.fingerboard.Frame.Shape.CLOSED;
import static fingering.fingerboard.Frame.Shape.EXTENDED_BACK;
import static fingering.fingerboard.Frame.Shape.EXTENDED_FORWARD;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.base.Splitter;
import fingering.fingerboard.Frame.Shape;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.Position;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Extensions of the cello, and the positions above the neck: common practice, no source. */
class CelloExtensionTest {
  private static final Splitter BLANK = Splitter.on(' ');
  private static final Instrument CELLO = Instruments.standard().named("cello");

  private static boolean opens(Instrument cello, String hand, String position, Shape shape) {
    return Fingerboard.of(cello, LeftHand.parse(hand)).frames().stream()
        .anyMatch(
            frame ->
                frame.position().equals(Position.parse(position))
                    && frame.remark().isEmpty()
                    && frame.shape() == shape);
  }

  // A major third from the first finger measures 134 mm on a string of 690 mm in half position, 127
  // in 1st, 113 in 2nd: L(2^(-a/12) - 2^(-b/12)), equal temperament.
  @ParameterizedTest
  @CsvSource({
    "small, half, false",
    "small, 1st, true",
    "small, 2nd, true",
    "medium, half, true",
    "large, half, true",
    "130mm, half, false",
    "135mm, half, true",
    "120mm, 1st, false",
    "120mm, 2nd, true",
    "90mm, 4th, false",
    "96mm, 4th, true"
  })
  void aForwardExtensionSpansAMajorThird(String hand, String position, boolean opens) {
    assertThat(opens(CELLO, hand, position, EXTENDED_FORWARD)).isEqualTo(opens);
  }

  @ParameterizedTest
  @CsvSource({
    "small, 1st, false",
    "small, 2nd, true",
    "small, 3rd, true",
    "medium, 1st, true",
    "large, 1st, true"
  })
  void aBackwardExtensionSpansAMajorThird(String hand, String position, boolean opens) {
    assertThat(opens(CELLO, hand, position, EXTENDED_BACK)).isEqualTo(opens);
  }

  @Test
  void halfPositionHasNoBackwardExtension() {
    assertThat(opens(CELLO, "200mm", "half", EXTENDED_BACK)).isFalse();
  }

  @Test
  void aSmallHandExtendsInHalfPositionOnASevenEighthsCello() {
    Instruments known = Instruments.standard();
    Instrument smaller = CELLO.sized(known.size(CELLO, "7/8"));
    assertThat(opens(smaller, "129mm", "half", EXTENDED_FORWARD)).isTrue();
    assertThat(opens(CELLO, "129mm", "half", EXTENDED_FORWARD)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"small", "medium", "large"})
  void everyHandHasTheClosedPositions(String hand) {
    for (String position : List.of("half", "1st", "2nd", "3rd", "4th")) {
      assertThat(opens(CELLO, hand, position, CLOSED)).as(position).isTrue();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "2nd lowered, C4",
    "2nd, C#4",
    "3rd, D4",
    "3rd raised, D#4",
    "5th lowered, F4",
    "5th, F#4",
    "6th, G4",
    "6th raised, G#4"
  })
  void oneOfTwoPlacesOfAPositionIsLoweredOrRaised(String name, String note) {
    assertThat(Taken.on("cello").on(note, 1))
        .filteredOn(p -> p.frame().display().equals(name) && p.frame().shape() == CLOSED)
        .extracting(Placement::finger)
        .containsExactly(Finger.FIRST);
  }

  // on the A string: semitone and tone, tone and semitone, and two tones with a stretch
  @ParameterizedTest
  @CsvSource({
    "5th lowered, F4, F#4 G4, G#4, A4",
    "5th, F#4, G4 G#4, A4, A#4",
    "6th, G4, G#4 A4, A#4, B4",
    "6th raised, G#4, A4 A#4, B4, B#4",
    "7th, A4, A#4 B4, C5, C#5"
  })
  void aboveTheNeckFirstToThirdFingerSpanAMinorOrAStretchedMajorThird(
      String name, String first, String seconds, String third, String stretched) {
    assertThat(above(name, first, "1")).isEqualTo("at rest");
    for (String second : BLANK.split(seconds)) {
      assertThat(above(name, second, "2")).as(second).isEqualTo("at rest");
    }
    assertThat(above(name, third, "3")).isEqualTo("at rest");
    assertThat(above(name, stretched, "3")).isEqualTo("stretched");
    assertThat(above(name, first, "2")).isEqualTo("not");
    assertThat(above(name, third, "2")).isEqualTo("not");
  }

  private static String above(String name, String note, String finger) {
    return Taken.on("cello").on(note, 1).stream()
        .filter(p -> p.frame().display().equals(name) && p.finger().symbol().equals(finger))
        .findFirst()
        .map(p -> p.stretch() > 0 ? "stretched" : "at rest")
        .orElse("not");
  }

  @Test
  void aboveTheNeckTheFourthFingerIsNotUsed() {
    for (int midi = 57; midi <= 88; midi++) {
      assertThat(Taken.on("cello").on(Pitches.natural(midi).toString(), 1))
          .filteredOn(p -> p.frame().position().compareTo(Position.of(5)) >= 0)
          .extracting(Placement::finger)
          .doesNotContain(Finger.FOURTH);
    }
  }

  @Test
  void theFourthFingerOfFourthPositionStillStopsAndStretchesUpByASemitone() {
    assertThat(Taken.on("cello").all("G4", 1, "4", "4th")).anyMatch(p -> p.stretch() == 0);
    assertThat(Taken.on("cello").all("G#4", 1, "4", "4th"))
        .isNotEmpty()
        .allMatch(p -> p.stretch() > 0);
  }

  @Test
  void thereAreNoExtensionsAboveFourthPosition() {
    assertThat(Fingerboard.of(CELLO, LeftHand.LARGE).frames())
        .filteredOn(frame -> frame.shape() == EXTENDED_BACK || frame.shape() == EXTENDED_FORWARD)
        .allMatch(frame -> frame.position().compareTo(Position.FOURTH) <= 0);
  }
}
