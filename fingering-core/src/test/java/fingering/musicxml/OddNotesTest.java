package fingering.musicxml;

import static fingering.musicxml.ScoreText.START;
import static fingering.musicxml.ScoreText.backup;
import static fingering.musicxml.ScoreText.measure;
import static fingering.musicxml.ScoreText.note;
import static fingering.musicxml.ScoreText.passage;
import static fingering.musicxml.ScoreText.rest;
import static fingering.musicxml.ScoreText.violin;
import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.Note;
import fingering.music.Passage;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.Planner;
import fingering.scoring.rules.StandardRules;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Notes and signs that cannot be read are remarked on, and the rest is read. */
class OddNotesTest {
  private static String divided(String divisions) {
    return START.replace("<divisions>4<", "<divisions>" + divisions + "<");
  }

  private static BigFraction quarters(Note note) {
    return note.end().subtract(note.start());
  }

  // Ties.

  @Test
  void endlessTiesEndWithTheLastNote() {
    Passage passage =
        passage(
            violin(
                measure("1", START, tied("D5"), tied("D5"), tied("D5")),
                measure("2", tied("D5"), note("E5", 4))));

    assertThat(passage.notes()).hasSize(2);
    assertThat(quarters(passage.notes().get(0))).isEqualTo(BigFraction.of(4));
  }

  private static ScoreText.N tied(String pitch) {
    return note(pitch, 4).tie("stop").tie("start");
  }

  @Test
  void aTieInACircleOfTwoVoicesIsOneNote() {
    Passage passage =
        passage(
            violin(
                measure(
                    "1",
                    START,
                    tied("D5"),
                    tied("D5").voice("2"),
                    backup(8),
                    tied("D5").voice("2"),
                    tied("D5"))));

    assertThat(passage.notes()).isNotEmpty().allMatch(n -> quarters(n).signum() > 0);
  }

  @Test
  void tiesWithOnlyOneEndAreIgnored() {
    Passage passage =
        passage(
            violin(
                measure(
                    "1",
                    START,
                    note("D5", 4).tie("stop"),
                    note("E5", 4).tie("start"),
                    note("F#5", 4).tie("stop"),
                    rest(4))));

    assertThat(passage.notes()).hasSize(3).allMatch(n -> quarters(n).equals(BigFraction.ONE));
  }

  // Lengths and divisions.

  @ParameterizedTest
  @CsvSource({
    "2147483648, 8589934592",
    "0.5, 2",
    "1e3, 4000",
    "9223372036854775808, 36893488147419103232"
  })
  void largeAndDecimalDivisionsAreExact(String divisions, String whole) {
    String music = note("D5", 7).toString().replace(">7<", ">" + whole + "<");

    assertThat(quarters(passage(violin(measure("1", divided(divisions), music))).notes().get(0)))
        .isEqualTo(BigFraction.of(4));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "0",
        "-1",
        "-2147483648",
        "0.0",
        "1e999999999",
        "1e-999999999",
        "0.00000000000000000000000000000000000000000001",
        "x"
      })
  void impossibleDivisionsAreDerivedFromAPrintedNote(String divisions) {
    String music = note("D5", 12).toString().replace("<voice>", "<type>half</type><dot/><voice>");
    Passage passage = passage(violin(measure("1", divided(divisions), music, note("E5", 4))));

    assertThat(quarters(passage.notes().get(0))).isEqualTo(BigFraction.of(3));
    assertThat(quarters(passage.notes().get(1))).isEqualTo(BigFraction.ONE);
    assertThat(passage.remarks())
        .contains(
            "a number of divisions is missing or not readable and is derived from printed note values: measure 1, beat 1");
  }

  @ParameterizedTest
  @ValueSource(strings = {"-4", "400004", "1e39", "1e999999999", "x", ""})
  void aNoteOfImpossibleLengthIsAsLongAsPrinted(String length) {
    String half =
        note("D5", 7)
            .toString()
            .replace(">7<", ">" + length + "<")
            .replace("<voice>", "<type>half</type><voice>");
    Passage passage = passage(violin(measure("1", START, half, note("E5", 8))));

    assertThat(passage.notes().get(1).start()).isEqualTo(BigFraction.of(2));
    assertThat(passage.remarks())
        .contains("a note has no readable duration and is as long as printed: measure 1, beat 1");
  }

  @Test
  void aTripletOfImpossibleLengthIsAsLongAsPrinted() {
    String triplet =
        note("D5", 7)
            .toString()
            .replace("<duration>7</duration>", "")
            .replace(
                "<voice>",
                "<type>eighth</type><time-modification><actual-notes>3</actual-notes><normal-notes>2</normal-notes></time-modification><voice>");
    Passage passage =
        passage(
            violin(
                measure(
                    "1",
                    START,
                    triplet,
                    triplet.replace("<actual-notes>3<", "<actual-notes>0<"),
                    note("E5", 8))));

    assertThat(passage.notes().get(1).start()).isEqualTo(BigFraction.of(1, 3));
    assertThat(passage.notes().get(2).start()).isEqualTo(BigFraction.of(5, 6));
  }

  @Test
  void aNoteWithoutAnyLengthTakesNoTime() {
    String bare = note("D5", 7).toString().replace("<duration>7</duration>", "");
    Passage passage = passage(violin(measure("1", START, note("E5", 4), bare, note("F5", 4))));

    assertThat(passage.notes()).hasSize(3);
    assertThat(passage.remarks())
        .contains(
            "a note or rest has no readable duration and is without length: measure 1, beat 2");
  }

  @Test
  void anUnreadableBackupLeadsToTheStartOfTheMeasure() {
    String back = backup(4).replace(">4<", ">x<");
    Passage passage =
        passage(violin(measure("1", START, note("D5", 8), back, note("A4", 8).voice("2"))));

    assertThat(passage.moments()).hasSize(1);
    assertThat(passage.remarks())
        .anyMatch(remark -> remark.startsWith("a backup has no readable duration"));
  }

  @Test
  void anUnreadableForwardTakesNoTime() {
    Passage passage =
        passage(violin(measure("1", START, "<forward/>", note("D5", 8), note("E5", 8))));

    assertThat(passage.notes().get(0).start()).isEqualTo(BigFraction.ZERO);
    assertThat(passage.remarks())
        .anyMatch(remark -> remark.startsWith("a forward has no readable duration"));
  }

  @Test
  void lengthsWithoutACommonDivisionDoNotGrowWithoutBound() {
    StringBuilder measures = new StringBuilder();
    for (int i = 0; i < 3_000; i++) {
      String divisions = "1" + "0".repeat(30) + (2 * i + 1);
      measures.append(
          measure(
              "" + (i + 1),
              i == 0 ? START : "",
              "<attributes><divisions>" + divisions + "</divisions></attributes>",
              note("D5", 16)));
    }
    Passage passage = passage(violin(measures.toString()));

    assertThat(passage.notes()).hasSize(3_000);
    assertThat(passage.remarks())
        .anyMatch(remark -> remark.contains("as long as its time signature"));
  }

  // Pitches.

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<step>H</step><octave>5</octave>",
        "<octave>5</octave>",
        "<step>D</step><alter>40</alter><octave>5</octave>",
        "<step>D</step><alter>1e999999999</alter><octave>5</octave>",
        "<step>D</step><octave>99</octave>",
        ""
      })
  void aNoteWithoutReadablePitchIsLeftOutAndKeepsItsTime(String pitch) {
    String broken =
        note("D5", 4).toString().replaceFirst("<pitch>.*</pitch>", "<pitch>" + pitch + "</pitch>");
    Passage passage =
        passage(violin(measure("1", START, note("E5", 4), broken, broken, note("F5", 4))));

    assertThat(passage.notes()).hasSize(2);
    assertThat(passage.notes().get(1).start()).isEqualTo(BigFraction.of(3));
    assertThat(passage.remarks())
        .contains(
            "2 notes have no readable pitch and are left out: measure 1, beat 2; measure 1, beat 3");
  }

  @Test
  void aPartWithoutAnyReadableNoteIsRefused() {
    String broken = note("D5", 4).toString().replace("<step>D</step>", "");

    assertThat(Refusal.of(() -> passage(violin(measure("1", START, broken)))))
        .startsWith("Violin has no note that can be read (a note has no readable pitch");
  }

  @Test
  void aRefusedPartNamesOneReason() {
    String broken = note("D5", 4).toString().replace("<step>D</step>", "");
    String transposed =
        "<attributes><transpose><chromatic>9999</chromatic></transpose></attributes>";

    assertThat(Refusal.of(() -> passage(violin(measure("1", START, transposed, broken)))))
        .isEqualTo(
            "Violin has no note that can be read (a note has no readable pitch and is left out: measure 1, beat 1): fix the part in your notation program and export the score again.");
  }

  @Test
  void aNoteTransposedOutOfRangeIsLeftOut() {
    String down = "<attributes><transpose><chromatic>-120</chromatic></transpose></attributes>";
    String back = "<attributes><transpose><chromatic>0</chromatic></transpose></attributes>";
    Passage passage =
        passage(violin(measure("1", START, down, note("D5", 4), back, note("E5", 4))));

    assertThat(passage.notes()).hasSize(1);
    assertThat(passage.remarks())
        .contains("a note is transposed out of range and left out: D5 in measure 1");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<transpose><chromatic>1e99</chromatic></transpose>",
        "<transpose><chromatic>0</chromatic><octave-change>99999999999</octave-change></transpose>",
        "<time><beats>x</beats><beat-type>4</beat-type></time>",
        "<key><fifths>x</fifths></key>",
        "<staff-details><staff-tuning line='7'><tuning-step>G</tuning-step><tuning-octave>3</tuning-octave></staff-tuning></staff-details>"
      })
  void signsThatCannotBeReadAreRemarkedOn(String sign) {
    Passage passage =
        passage(
            violin(measure("1", START, "<attributes>" + sign + "</attributes>", note("D5", 16))));

    assertThat(passage.notes().get(0).midi()).isEqualTo(74);
    assertThat(passage.remarks()).anyMatch(remark -> remark.contains("is not readable and is"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"number=\"x\"", "number=\"\"", "number=\"99999999999\""})
  void textInsteadOfANumberInASignIsIgnored(String number) {
    String music = note("D5", 16).slur("start", 1).toString().replace("number=\"1\"", number);

    assertThat(passage(violin(measure("1", START, music))).notes()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource({"G3, 1", "E4, 1", "D5, 5", "E7, 4"})
  void aPrintedStringThatDoesNotHaveItsNoteIsIgnored(String pitch, String string) {
    Passage passage =
        passage(
            violin(
                measure("1", START, note(pitch, 16).technical("<string>" + string + "</string>"))));

    Plan plan =
        Planner.of(passage, StandardRules.commonPractice())
            .plan(Brief.free("as printed").withKeepPrinted(true));
    assertThat(plan.notes()).hasSize(1);
    assertThat(plan.notes().get(0).placement().string()).isNotEqualTo(Integer.parseInt(string));
    assertThat(passage.remarks())
        .anyMatch(
            remark ->
                remark.startsWith("a note is not on the printed string, which is ignored: ")
                    && remark.endsWith(" at " + pitch + " in measure 1"));
  }

  @Test
  void aBackupBeyondTheMeasureStopsAtItsBeginning() {
    Passage passage =
        passage(
            violin(measure("1", START, note("D5", 8), backup(4_000), note("A4", 8).voice("2"))));

    assertThat(passage.moments()).hasSize(1);
    assertThat(passage.notes()).hasSize(2);
  }

  // Large numbers.
}
