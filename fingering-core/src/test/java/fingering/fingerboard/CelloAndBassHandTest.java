package fingering.fingerboard;

import static fingering.fingerboard.Frame.Shape.CLOSED;
import static fingering.fingerboard.Frame.Shape.EXTENDED_BACK;
import static fingering.fingerboard.Frame.Shape.EXTENDED_FORWARD;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.base.Splitter;
import fingering.fingerboard.Frame.Shape;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CelloAndBassHandTest {
  private static final Splitter BLANK = Splitter.on(' ');
  private final Taken cello = Taken.on("cello");
  private final Taken bass = Taken.on("bass");

  private boolean spelled(String pitch, int string, int finger, String position, Shape shape) {
    return cello.all(pitch, string, "" + finger, position).stream()
        .anyMatch(p -> p.frame().shape() == shape && !p.respelled());
  }

  // cello positions on the A and G strings; common practice, no source
  @ParameterizedTest
  @CsvSource({
    "1, half, Bb3 B3 C4 C#4",
    "1, 1st, B3 C4 C#4 D4",
    "1, 2nd, C4 C#4 D4 Eb4",
    "1, 2nd, C#4 D4 D#4 E4",
    "1, 3rd, D4 Eb4 E4 F4",
    "1, 3rd, D#4 E4 F4 F#4",
    "1, 4th, E4 F4 F#4 G4",
    "3, half, Ab2 A2 Bb2 B2",
    "3, 1st, A2 Bb2 B2 C3",
    "3, 4th, D3 Eb3 E3 F3"
  })
  void theClosedHandOfTheCelloHasOneSemitoneForEachFinger(
      int string, String position, String notes) {
    List<String> each = BLANK.splitToList(notes);
    for (int finger = 1; finger <= 4; finger++) {
      assertThat(spelled(each.get(finger - 1), string, finger, position, CLOSED))
          .as("%s by %s in %s", each.get(finger - 1), finger, position)
          .isTrue();
    }
  }

  // common practice, no source
  @Test
  void aFlatBFlatCOnTheGStringIsFirstPositionExtendedBack() {
    assertThat(spelled("Ab2", 3, 1, "1st", EXTENDED_BACK)).isTrue();
    assertThat(spelled("Bb2", 3, 2, "1st", EXTENDED_BACK)).isTrue();
    assertThat(spelled("C3", 3, 4, "1st", EXTENDED_BACK)).isTrue();
    assertThat(spelled("Ab2", 3, 1, "half", EXTENDED_FORWARD)).isFalse();
    assertThat(spelled("C3", 3, 4, "half", EXTENDED_FORWARD)).isFalse();
  }

  // common practice, no source
  @Test
  void gSharpASharpBSharpOnTheGStringIsHalfPositionExtendedForward() {
    assertThat(spelled("G#2", 3, 1, "half", EXTENDED_FORWARD)).isTrue();
    assertThat(spelled("A#2", 3, 2, "half", EXTENDED_FORWARD)).isTrue();
    assertThat(spelled("B#2", 3, 4, "half", EXTENDED_FORWARD)).isTrue();
    assertThat(spelled("G#2", 3, 1, "1st", EXTENDED_BACK)).isFalse();
    assertThat(spelled("B#2", 3, 4, "1st", EXTENDED_BACK)).isFalse();
  }

  // common practice, no source: D major in 1st on the C string: D, E, F♯ by 1, 2, 4
  @Test
  void dEFSharpOnTheCStringIsFirstPositionExtendedForward() {
    assertThat(spelled("D2", 4, 1, "1st", EXTENDED_FORWARD)).isTrue();
    assertThat(spelled("E2", 4, 2, "1st", EXTENDED_FORWARD)).isTrue();
    assertThat(spelled("F#2", 4, 4, "1st", EXTENDED_FORWARD)).isTrue();
    assertThat(cello.all("F#2", 4, "4", "1st")).noneMatch(p -> p.frame().shape() == CLOSED);
  }

  // common practice, no source
  @Test
  void aFirstFingerASemitoneAboveTheNutIsHalfPositionInAnySpelling() {
    assertThat(spelled("Ab2", 3, 1, "half", CLOSED)).isTrue();
    assertThat(spelled("G#2", 3, 1, "half", CLOSED)).isTrue();
    assertThat(spelled("Ab2", 3, 1, "1st", CLOSED)).isFalse();
  }

  @Test
  void anExtensionIsNotAShift() {
    Frame closed = frame("1st", CLOSED);
    assertThat(closed.shiftsTo(frame("1st", EXTENDED_BACK))).isFalse();
    assertThat(closed.shiftsTo(frame("1st", EXTENDED_FORWARD))).isFalse();
    assertThat(closed.shiftsTo(frame("half", CLOSED))).isTrue();
    assertThat(closed.shiftsTo(closed)).isFalse();
  }

  private Frame frame(String position, Shape shape) {
    return cello.fingerboard().frames().stream()
        .filter(f -> f.position().display().equals(position) && f.shape() == shape)
        .findFirst()
        .orElseThrow();
  }

  // F. Simandl, New Method for the Double Bass, from memory: the positions on the G string
  @ParameterizedTest
  @CsvSource({
    "half, G#2 A2 Bb2",
    "1st, A2 Bb2 B2",
    "2nd, Bb2 B2 C3",
    "2½, B2 C3 C#3",
    "3rd, C3 C#3 D3",
    "3½, C#3 D3 D#3",
    "4th, D3 D#3 E3",
    "5th, Eb3 E3 F3",
    "5½, E3 F3 F#3",
    "6th, F3 F#3 G3",
    "6½, F#3 G3 G#3"
  })
  void firstSecondAndFourthFingerOfTheBassSpanATone(String position, String notes) {
    List<String> each = BLANK.splitToList(notes);
    assertThat(bass.all(each.get(0), 1, "1", position)).hasSize(1);
    assertThat(bass.all(each.get(1), 1, "2", position)).hasSize(1);
    assertThat(bass.all(each.get(2), 1, "4", position)).hasSize(1);
  }

  // Simandl, from memory
  @Test
  void theThirdFingerIsNotUsedInTheNeckPositionsOfTheBass() {
    for (String position : List.of("half", "1", "2", "2½", "3", "3½", "4")) {
      for (int midi = 28; midi < 58; midi++) {
        assertThat(
                bass.fingerboard().placements(Pitches.natural(midi)).stream()
                    .filter(p -> p.frame().position().toString().equals(position)))
            .noneMatch(p -> p.finger() == Finger.THIRD);
      }
    }
  }

  // Simandl, from memory
  @Test
  void inSeventhPositionTheThirdFingerReplacesTheFourth() {
    assertThat(bass.all("A3", 1, "3", "7")).hasSize(1);
    assertThat(bass.all("A3", 1, "4", "7")).isEmpty();
  }
}
