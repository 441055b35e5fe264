package fingering.abc;

import static fingering.abc.Typed.eighths;
import static fingering.abc.Typed.passage;
import static org.assertj.core.api.Assertions.assertThat;

import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lengths in eighth notes. Rules and examples: ABC standard 2.1, from memory. */
class LengthsTest {

  @ParameterizedTest
  @CsvSource({
    "A, 1",
    "A1, 1",
    "A2, 2",
    "A3, 3",
    "A/2, 1/2",
    "A/, 1/2",
    "A//, 1/4",
    "A1/2, 1/2",
    "A3/2, 3/2",
    "A3/, 3/2",
    "A/4, 1/4",
    "A7/4, 7/4",
    "A5, 5",
    "A9/2, 9/2",
    "A16, 16",
  })
  void aLengthMultipliesTheUnit(String note, String length) {
    assertThat(eighths("L:1/8\nK:C\n" + note)).isEqualTo(length);
  }

  @ParameterizedTest
  @CsvSource({
    "2/4, 1/2",
    "3/8, 1/2",
    "5/8, 1/2",
    "3/4, 1",
    "6/8, 1",
    "4/4, 1",
    "C, 1",
    "C|, 1",
    "none, 1",
    "7/8, 1",
    "2/2, 1",
    "9/16, 1/2",
    "(2+3+2)/8, 1",
    "2+3/8, 1/2"
  })
  void theDefaultUnitBelowThreeQuartersIsASixteenth(String meter, String length) {
    assertThat(eighths("M:" + meter + "\nK:C\nA")).isEqualTo(length);
  }

  @Test
  void withoutAMeterTheUnitIsAnEighth() {
    assertThat(eighths("K:C\nA2")).isEqualTo("2");
  }

  @ParameterizedTest
  @CsvSource({"1/16, 1/2", "1/4, 2", "1/2, 4", "1, 8", "1/1, 8", "1/64, 1/8"})
  void theUnitIsRead(String unit, String length) {
    assertThat(eighths("L:" + unit + "\nM:2/4\nK:C\nA")).isEqualTo(length);
  }

  @Test
  void theUnitMayChangeAndANewMeterKeepsIt() {
    assertThat(eighths("M:4/4\nK:C\nA[L:1/16]A|[M:2/4]A|\nL:1/4\nA")).isEqualTo("1 1/2 1/2 2");
  }

  @Test
  void theThreeSpellingsOfABrokenRhythmAreEqual() {
    String expected = "3/2 1/2 1/2 3/2 1 1 1 1";
    assertThat(eighths("L:1/16\nK:C\na3b cd3 a2b2c2d2")).isEqualTo(expected);
    assertThat(eighths("L:1/8\nK:C\na3/2b/2 c/2d3/2 abcd")).isEqualTo(expected);
    assertThat(eighths("L:1/8\nK:C\na>b c<d abcd")).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "A>B, 3/2 1/2",
    "A<B, 1/2 3/2",
    "A>>B, 7/4 1/4",
    "A<<B, 1/4 7/4",
    "A>>>B, 15/8 1/8",
    "A2>B2, 3 1",
    "A > B, 3/2 1/2",
    "[AC]>B, 3/2 3/2 1/2"
  })
  void aBrokenRhythmDotsOneNoteAndShortensTheOther(String notes, String lengths) {
    assertThat(eighths("L:1/8\nK:C\n" + notes)).isEqualTo(lengths);
  }

  @Test
  void aBrokenRhythmMayIncludeARest() {
    assertThat(eighths("K:C\nz>A B>z A")).isEqualTo("1/2 3/2 1");
  }

  @Test
  void aBrokenRhythmIgnoresGraceNotes() {
    String expected = "1/2 0 3/2";
    assertThat(eighths("K:C\nA<{g}A")).isEqualTo(expected);
    assertThat(eighths("K:C\nA{g}<A")).isEqualTo(expected);
    assertThat(eighths("K:C\nA/2{g}A3/2")).isEqualTo(expected);
  }

  // The table of the section 'Duplets, triplets, quadruplets, etc.'
  @ParameterizedTest
  @CsvSource({
    "4/4, 2, 3", "4/4, 3, 2", "4/4, 4, 3", "4/4, 5, 2", "4/4, 6, 2", "4/4, 7, 2", "4/4, 8, 3",
    "4/4, 9, 2", "6/8, 5, 3", "9/8, 7, 3", "12/8, 9, 3", "6/8, 2, 3", "6/8, 3, 2", "3/4, 5, 2"
  })
  void aTupletIsPlayedInTheTimeOfTheStandardsTable(String meter, int notes, int time) {
    String abc = "M:" + meter + "\nL:1/8\nK:C\n(" + notes + "A".repeat(notes) + "c";
    String each = BigFraction.of(time, notes).toString().replace(" ", "");
    assertThat(eighths(abc)).isEqualTo((each + " ").repeat(notes) + "1");
  }

  @ParameterizedTest
  @CsvSource({
    "(3ABc d, 2/3 2/3 2/3 1",
    "(3:2ABc d, 2/3 2/3 2/3 1",
    "(3:2:3ABc d, 2/3 2/3 2/3 1",
    "(3::ABc d, 2/3 2/3 2/3 1",
    "(3::2A2B d, 4/3 2/3 1",
    "(3:2:2A2B d, 4/3 2/3 1",
    "(3:2:4A2B2cd e, 4/3 4/3 2/3 2/3 1",
    "(5:4:5ABcde f, 4/5 4/5 4/5 4/5 4/5 1",
    "(3A2B2c2 d, 4/3 4/3 4/3 1",
    "(3A>Bc d, 1 1/3 2/3 1",
    "(3zAB d, 2/3 2/3 1",
    "(3A{g}Bc d, 2/3 0 2/3 2/3 1",
    "(3[Ac]Bd d, 2/3 2/3 2/3 2/3 1",
  })
  void theLongFormOfATupletCountsItsNotes(String notes, String lengths) {
    assertThat(eighths("M:4/4\nL:1/8\nK:C\n" + notes)).isEqualTo(lengths);
  }

  @Test
  void lengthsInsideAndAfterAChordMultiply() {
    assertThat(eighths("K:C\n[C2E2G2]3")).isEqualTo("6 6 6").isEqualTo(eighths("K:C\n[CEG]6"));
  }

  @Test
  void tiedNotesAreOne() {
    assertThat(eighths("K:C\nA2-A|B-|B c-c-c|[DA]-[DA]")).isEqualTo("3 2 3 2 2");
  }

  @Test
  void restsTakeTime() {
    assertThat(passage("M:3/4\nL:1/4\nK:C\nAz2|Z2|x3/2B3/2|").notes())
        .extracting(note -> note.start().toString())
        .containsExactly("0", "21 / 2");
  }

  @ParameterizedTest
  @CsvSource({
    "Q:1/4=84, quarter=84",
    "Q:3/8=60, dotted-quarter=60",
    "Q:\"Andante\" 1/2=50, half=50",
    "Q:1/8=120 \"Slow\", eighth=120",
    "Q:120, eighth=120",
    "Q:1/4 3/8 1/4 3/8=40, quarter=200",
  })
  void aTempoIsReadInItsUnit(String field, String tempo) {
    assertThat(passage("M:4/4\nL:1/8\n" + field + "\nK:C\nA").tempo()).hasToString(tempo);
  }

  @Test
  void aTempoMayChange() {
    assertThat(passage("M:2/4\nL:1/4\nQ:1/4=60\nK:C\nAB|[Q:1/4=90]cd|").tempi())
        .extracting(change -> change.start() + " " + change.tempo())
        .containsExactly("0 quarter=60", "2 quarter=90");
  }
}
