package fingering.abc;

import static fingering.abc.Typed.numbers;
import static fingering.abc.Typed.written;
import static org.assertj.core.api.Assertions.assertThat;

import fingering.abc.TuneText.TypedMeasure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where faults and measures stand in the text of a tune. */
class TuneTextTest {
  private static final String HEAD = "X:1\nM:4/4\nL:1/4\nK:C clef=alto\n";

  private static String faults(String abc) {
    return String.join(
        "; ",
        written(abc).text().faults().stream()
            .map(fault -> fault.line() + ":" + fault.column() + " " + fault.what())
            .toList());
  }

  @Test
  void measuresStandWhereTheirFirstNotesWereTyped() {
    assertThat(written(HEAD + "C | D E F G |\n  [M:3/4] (3ABc d2 |]").text().measures())
        .containsExactly(
            new TypedMeasure("0", true, 5, 1, true),
            new TypedMeasure("1", false, 5, 5, true),
            new TypedMeasure("2", false, 6, 13, false));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '@',
      value = {
        "C D E F | G A B | c4 |] @ 5:11 measure 2 has 3 beats, 4 expected",
        "C D E F | G A B c/ | c4 |] @ 5:11 measure 2 has 3\u00bd beats, 4 expected",
        "C D E F | C/ | c4 |] @ 5:11 measure 2 has \u00bd beat, 4 expected",
        "C D E F | G A B c//// | c4 |] @ 5:11 measure 2 has 3 1/16 beats, 4 expected",
        "C D E F | (3GAB | c4 |] @ 5:13 measure 2 has 2 beats, 4 expected",
        "[M:6/8] C3 | G2 A/ | c3 |] @ 5:14 measure 2 has 5 eighths, 6 expected",
        "[M:2/2] C4 | D3 | c4 |] @ 5:14 measure 2 has 1\u00bd half notes, 2 expected",
        "C D E F | G A B c d | c4 |] @ 5:11 measure 2 has 5 beats, 4 expected"
      })
  void measureThatDoesNotAddUpIsCountedInBeats(String notes, String fault) {
    assertThat(faults(HEAD + notes)).isEqualTo(fault);
  }

  @Test
  void faultsAreListedByPlaceEachTimeTheyOccur() {
    assertThat(faults(HEAD + "C D E F k | G k A B | C4 |]"))
        .isEqualTo(
            "5:9 the sign 'k' is not used in ABC; it was left out; "
                + "5:13 measure 2 has 3 beats, 4 expected; "
                + "5:15 the sign 'k' is not used in ABC; it was left out");
  }

  @Test
  void remarksWithoutAPlaceAreOfTheirOwn() {
    TuneText text = written("K:C\nC k D|").text();
    assertThat(text.remarks()).singleElement().asString().startsWith("the tune has no number");
    assertThat(text.faults()).hasSize(1);
  }

  @Test
  void firstMeasureOfAnExcerptHasItsPrintedNumber() {
    String head = "X:1\nM:4/4\nL:1/4\n%%setbarnb 41\nK:C clef=alto\n";
    assertThat(numbers(head + "C D E F | G A B c |]")).containsExactly("41", "42");
    assertThat(numbers(head + "C | C D E F | G A :| B | C4 |]"))
        .containsExactly("40", "41", "42", "42", "43");
    assertThat(faults("X:1\n%%setbarnb\nK:C\nC|"))
        .isEqualTo(
            "2:3 setbarnb is followed by the number of the first measure, 1 to 9999; it was left out");
    assertThat(faults("X:1\n%%setbarnb 0\nK:C\nC|")).startsWith("2:3 setbarnb");
  }
}
