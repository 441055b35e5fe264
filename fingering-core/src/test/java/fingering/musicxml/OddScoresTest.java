package fingering.musicxml;

import static fingering.musicxml.ScoreText.START;
import static fingering.musicxml.ScoreText.backup;
import static fingering.musicxml.ScoreText.measure;
import static fingering.musicxml.ScoreText.note;
import static fingering.musicxml.ScoreText.part;
import static fingering.musicxml.ScoreText.passage;
import static fingering.musicxml.ScoreText.read;
import static fingering.musicxml.ScoreText.rest;
import static fingering.musicxml.ScoreText.score;
import static fingering.musicxml.ScoreText.violin;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.LeftHand;
import fingering.music.KeySignature;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.file.ScoreLimits;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.Planner;
import fingering.scoring.rules.StandardRules;
import fingering.tables.Letter;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Scores that are odd but honest, or damaged by accident. */
@Timeout(60)
class OddScoresTest {
  private static final String UNPITCHED =
      "<note><unpitched><display-step>E</display-step><display-octave>4</display-octave>"
          + "</unpitched><duration>4</duration><voice>1</voice></note>";

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

  @Test
  void aMillionEmptyMeasuresAreRefusedUnlessAllowed() {
    String many = violin(measure("1", START, note("D5", 16)), "<measure/>".repeat(1_000_000));
    ScoreLimits more = ScoreLimits.DEFAULT.with("measures=1000001");

    assertThat(Refusal.of(() -> read(many)))
        .contains("more than 500000 measures in all parts", "--limit measures=NUMBER");
    Score allowed = ScoreReader.read(ScoreFile.of(many, ImmutableList.of(), more));
    assertThat(allowed.passage(PassageRequest.WHOLE).measures()).hasSize(1_000_001);
  }

  @Test
  void hundredsOfVoicesAreReadAndListedBriefly() {
    StringBuilder music = new StringBuilder();
    for (int voice = 1; voice <= 900; voice++) {
      music.append(note("D5", 16).voice("" + voice)).append(backup(16));
    }
    Score score = read(violin(measure("1", START, music)));

    assertThat(score.passage(PassageRequest.WHOLE).moments()).hasSize(1);
    assertThat(
            Refusal.of(
                () ->
                    score.passage(
                        new PassageRequest(
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.of("x")))))
        .contains("more");
  }

  @Test
  void thousandsOfVoicesAndEndlessChordsAreRefused() {
    StringBuilder voices = new StringBuilder();
    for (int voice = 1; voice <= 5_000; voice++) {
      voices.append(note("D5", 16).voice("" + voice)).append(backup(16));
    }
    String chord = note("D5", 16) + note("E5", 16).chord().toString().repeat(100_000);

    for (String music : new String[] {voices.toString(), chord}) {
      assertThat(Refusal.of(() -> read(violin(measure("1", START, music)))))
          .contains("More than 1000 notes sound together in Violin, measure 1");
    }
  }

  @Test
  void thousandsOfHeldNotesAreRefused() {
    StringBuilder voices = new StringBuilder();
    for (int voice = 1; voice <= 20_000; voice++) {
      voices.append(note("CDEFGAB".charAt(voice % 7) + "5", 300_000).voice("" + voice));
      voices.append(backup(299_999));
    }
    Score score = read(violin(measure("1", START, voices)));

    assertThat(Refusal.of(() -> score.passage(PassageRequest.WHOLE)))
        .contains("More than 1000 notes sound together in measure 1");
  }

  private static Passage chord(int notes, int octaves) {
    StringBuilder chord = new StringBuilder(note("G3", 16).toString());
    for (int i = 1; i < notes; i++) {
      chord.append(note("CDEFGAB".charAt(i % 7) + "" + (4 + i % octaves), 16).chord());
    }
    return passage(violin(measure("1", START, chord)));
  }

  private static Plan planned(Passage passage) {
    return Planner.of(passage, StandardRules.commonPractice(), LeftHand.MEDIUM)
        .plan(Brief.free("free choice"));
  }

  @ParameterizedTest
  @ValueSource(ints = {5, 8, 100})
  void chordsWithMoreNotesThanStringsArePlannedAsUnplayable(int notes) {
    Plan plan = planned(chord(notes, 2));

    assertThat(plan.notes()).hasSize(notes);
    assertThat(plan.total()).isGreaterThan(300L * (notes - 4));
  }

  @Test
  void theNotesOfAChordBeyondTheFingerboardAreListedBriefly() {
    Plan plan = planned(chord(100, 5));

    assertThat(plan.notes()).hasSizeBetween(50, 99);
    assertThat(plan.passage().remarks())
        .filteredOn(remark -> remark.contains("beyond the fingerboard of the violin"))
        .singleElement()
        .satisfies(remark -> assertThat(remark).contains(" more are ").hasSizeLessThan(300));
  }

  @Test
  void hundredsOfPartsAreListedBriefly() {
    ScoreText.Part[] parts = new ScoreText.Part[300];
    Arrays.fill(parts, part("Violin", "", measure("1", START, note("D5", 16))));
    Score score = read(score(parts));

    assertThat(score.parts()).hasSize(300);
    assertThat(Refusal.of(() -> score.passage(PassageRequest.WHOLE))).contains("has 300 parts");
  }

  // Missing content, and content that is not for strings.

  @Test
  void aScoreWithoutPartListIsReadByItsClef() {
    String text =
        violin(measure("1", START, note("D5", 16))).replaceAll("<part-list>.*</part-list>", "");

    Score score = read(text);

    assertThat(score.parts().get(0).name()).isEqualTo("Part 1");
    assertThat(score.passage(PassageRequest.WHOLE).instrument().id()).isEqualTo("violin");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<score-partwise/>",
        "<score-partwise><part-list/></score-partwise>",
        "<score-partwise><part id='P1'/></score-partwise>"
      })
  void aScoreWithoutMusicIsRefused(String text) {
    assertThat(Refusal.of(() -> read(text))).contains("no part with a measure in it");
  }

  @Test
  void anEmptyPartIsRefusedOnlyIfRequested() {
    Score score =
        read(score(part("Viola", ""), part("Violin", "", measure("1", START, note("D5", 16)))));

    assertThat(score.passage(PassageRequest.WHOLE.withPart("Violin")).notes()).hasSize(1);
    assertThat(Refusal.of(() -> score.passage(PassageRequest.WHOLE.withPart("Viola"))))
        .isEqualTo("Viola has no notes to finger: choose another part with --part.");
  }

  @Test
  void aPercussionPartIsNamedAsSuch() {
    String text = violin(measure("1", START, UNPITCHED, UNPITCHED)).replace("Violin", "Drum");

    assertThat(Refusal.of(() -> passage(text)))
        .isEqualTo(
            "Drum is a percussion part without pitched notes: choose a part for a string instrument with --part.");
  }

  @Test
  void notesWithoutPitchAreLeftOutWithARemark() {
    Passage passage = passage(violin(measure("1", START, UNPITCHED, note("D5", 4), UNPITCHED)));

    assertThat(passage.notes()).hasSize(1);
    assertThat(passage.notes().get(0).start()).isEqualTo(BigFraction.ONE);
    assertThat(passage.remarks()).contains("2 notes without pitch left out");
  }

  @Test
  void aTablatureIsReadByItsPitchesButHasNoInstrument() {
    String text =
        score(
            part(
                "Lute",
                "",
                measure(
                    "1",
                    START.replace("<sign>G", "<sign>TAB"),
                    note("D5", 16).technical("<string>2</string><fret>5</fret>"))));

    assertThat(Refusal.of(() -> passage(text))).contains("name it with --instrument");
  }

  @Test
  void microtonesAreRoundedToSemitonesWithARemark() {
    String quarterTone = note("D5", 4).toString().replace("<alter>0<", "<alter>-0.25<");
    Passage passage = passage(violin(measure("1", START, quarterTone, note("E5", 4))));

    assertThat(passage.notes().get(0).midi()).isEqualTo(74);
    assertThat(passage.remarks()).contains("1 microtone is rounded to the nearest semitone");
  }

  @ParameterizedTest
  @ValueSource(strings = {"2147483647", "-5", "x", "1e999999999", ""})
  void aNoteWithAnInvalidOctaveRefusesNoOther(String octave) {
    String text =
        violin(
            measure(
                "1",
                START,
                note("D5", 16).toString().replace("<octave>5<", "<octave>" + octave + "<"),
                note("E5", 4)));
    assertThat(passage(text).notes()).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-1", "2147483648", "0/0", "x", "1e9"})
  void invalidTimeSignaturesAreIgnored(String beats) {
    String text =
        violin(measure("1", START.replace("<beats>4<", "<beats>" + beats + "<"), note("D5", 16)));

    assertThat(passage(text).measures().get(0).beats()).isEqualTo(4);
  }

  @ParameterizedTest
  @ValueSource(strings = {"2147483647", "-99999999999999999999", "15"})
  void extremeKeySignaturesAreLimited(String fifths) {
    int read = KeySignature.fifths(new BigInteger(fifths));
    assertThat(read).isEqualTo(fifths.startsWith("-") ? -14 : 14);
    assertThat(KeySignature.alter(Letter.B, read)).isEqualTo(fifths.startsWith("-") ? -2 : 2);
  }
}
