package fingering.musicxml;

import static fingering.musicxml.ScoreText.START;
import static fingering.musicxml.ScoreText.backup;
import static fingering.musicxml.ScoreText.measure;
import static fingering.musicxml.ScoreText.note;
import static fingering.musicxml.ScoreText.part;
import static fingering.musicxml.ScoreText.passage;
import static fingering.musicxml.ScoreText.read;
import static fingering.musicxml.ScoreText.score;
import static fingering.musicxml.ScoreText.violin;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.LeftHand;
import fingering.music.KeySignature;
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
import org.junit.jupiter.params.provider.ValueSource;

/** Scores that are odd but honest, or damaged by accident. */
@Timeout(60)
class OddScoresTest {
  private static final String UNPITCHED =
      "<note><unpitched><display-step>E</display-step><display-octave>4</display-octave>"
          + "</unpitched><duration>4</duration><voice>1</voice></note>";

  @Test
  void aMillionEmptyMeasuresAreRefusedUnlessAllowed() {
    String many = violin(measure("1", START, note("D5", 16)), "<measure/>".repeat(1_000_000));
    ScoreLimits more = ScoreLimits.DEFAULT.with("measures=1000001");

    assertThat(Refusal.of(() -> read(many)))
        .contains("more than 500000 measures in all parts", "raise the limit 'measures'");
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
        .isEqualTo("Viola has no notes to finger: choose another part.");
  }

  @Test
  void aPercussionPartIsNamedAsSuch() {
    String text = violin(measure("1", START, UNPITCHED, UNPITCHED)).replace("Violin", "Drum");

    assertThat(Refusal.of(() -> passage(text)))
        .isEqualTo(
            "Drum is a percussion part without pitched notes: choose a part for a string instrument.");
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

    assertThat(Refusal.of(() -> passage(text))).contains("choose it, such as violin");
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
