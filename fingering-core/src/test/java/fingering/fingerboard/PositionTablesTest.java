package fingering.fingerboard;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.base.Splitter;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Standard position tables as in any violin or viola method; common practice, no source. Each row:
 * string, position, and the notes of first to fourth finger.
 */
class PositionTablesTest {
  private static final Splitter BLANK = Splitter.on(' ');

  @ParameterizedTest
  @CsvSource({
    "4, 1st, A3 B3 C4 D4",
    "4, 2nd, B3 C4 D4 E4",
    "4, 3rd, C4 D4 E4 F4",
    "4, 4th, D4 E4 F4 G4",
    "4, 5th, E4 F4 G4 A4",
    "3, 1st, E4 F4 G4 A4",
    "3, 2nd, F4 G4 A4 B4",
    "3, 3rd, G4 A4 B4 C5",
    "3, 4th, A4 B4 C5 D5",
    "3, 5th, B4 C5 D5 E5",
    "2, 1st, B4 C5 D5 E5",
    "2, 2nd, C5 D5 E5 F5",
    "2, 3rd, D5 E5 F5 G5",
    "2, 4th, E5 F5 G5 A5",
    "2, 5th, F5 G5 A5 B5",
    "1, 1st, F5 G5 A5 B5",
    "1, 2nd, G5 A5 B5 C6",
    "1, 3rd, A5 B5 C6 D6",
    "1, 4th, B5 C6 D6 E6",
    "1, 5th, C6 D6 E6 F6"
  })
  void onTheViolinEachFingerPlaysItsLetter(int string, String position, String notes) {
    assertFingers("violin", string, position, notes);
  }

  @ParameterizedTest
  @CsvSource({
    "4, 1st, D3 E3 F3 G3",
    "4, 2nd, E3 F3 G3 A3",
    "4, 3rd, F3 G3 A3 B3",
    "4, 4th, G3 A3 B3 C4",
    "4, 5th, A3 B3 C4 D4",
    "3, 1st, A3 B3 C4 D4",
    "3, 2nd, B3 C4 D4 E4",
    "3, 3rd, C4 D4 E4 F4",
    "3, 4th, D4 E4 F4 G4",
    "3, 5th, E4 F4 G4 A4",
    "2, 1st, E4 F4 G4 A4",
    "2, 2nd, F4 G4 A4 B4",
    "2, 3rd, G4 A4 B4 C5",
    "2, 4th, A4 B4 C5 D5",
    "2, 5th, B4 C5 D5 E5",
    "1, 1st, B4 C5 D5 E5",
    "1, 2nd, C5 D5 E5 F5",
    "1, 3rd, D5 E5 F5 G5",
    "1, 4th, E5 F5 G5 A5",
    "1, 5th, F5 G5 A5 B5"
  })
  void onTheViolaEachFingerPlaysItsLetter(int string, String position, String notes) {
    assertFingers("viola", string, position, notes);
  }

  // Half position as in any violin method: the second finger on the letter of the first in 1st.
  @ParameterizedTest
  @CsvSource({
    "violin, 4, Ab3 A3 Bb3 C4",
    "violin, 4, G#3 A#3 B3 C4",
    "viola, 4, Db3 D3 Eb3 F3",
    "viola, 4, C#3 D#3 E3 F3",
    "viola, 1, A#4 B4 C5 D5"
  })
  void inHalfPositionTheHandIsAgainstTheNut(String instrument, int string, String notes) {
    List<String> each = BLANK.splitToList(notes);
    for (int finger = 1; finger <= 4; finger++) {
      assertThat(Taken.on(instrument).all(each.get(finger - 1), string, "" + finger, "half"))
          .as("%s by %s in half position", each.get(finger - 1), finger)
          .isNotEmpty();
    }
  }

  private static void assertFingers(String on, int string, String position, String notes) {
    List<String> each = BLANK.splitToList(notes);
    assertThat(each).hasSize(4);
    for (int finger = 1; finger <= 4; finger++) {
      String note = each.get(finger - 1);
      assertTaken(on, note, string, finger, position);
      // low and high, in every key: the accidental leaves finger and position alone
      assertTaken(on, note.charAt(0) + "#" + note.charAt(1), string, finger, position);
      boolean openKey = position.equals("1st") && finger == 1 && string == 1 && on.equals("violin");
      if (!openKey) { // F♭ on the E string is the open string
        assertTaken(on, note.charAt(0) + "b" + note.charAt(1), string, finger, position);
      }
    }
  }

  private static void assertTaken(String on, String note, int string, int finger, String position) {
    assertThat(Taken.on(on).all(note, string, "" + finger, position))
        .as("%s by %s in %s position on string %s", note, finger, position, string)
        .hasSize(1)
        .noneMatch(Placement::respelled);
  }
}
