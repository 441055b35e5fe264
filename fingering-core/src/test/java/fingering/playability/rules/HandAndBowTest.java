package fingering.playability.rules;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.playability.Finding;
import fingering.playability.FindingKind;
import fingering.playability.Scored;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Smallest cases of the rules of hand and bow: common practice, no source. */
class HandAndBowTest {

  private static long count(String part, String music, String level, FindingKind kind) {
    return Scored.of(part, music).findings(level, kind).size();
  }

  @Test
  void leapNeedsTime() {
    String leap = "B3/0.25 D7/0.25 B3/0.25 D7/0.25 r/3";
    Scored music = Scored.of("Violin", leap).tempo(160);
    assertThat(music.findings("advanced", FindingKind.LEAP_TOO_QUICK))
        .isNotEmpty()
        .allSatisfy(
            finding ->
                assertThat(finding.reason())
                    .containsPattern("needs 0\\.\\d\\d s, but has only 0\\."));
    assertThat(Scored.of("Violin", leap).tempo(40).findings("advanced", FindingKind.LEAP_TOO_QUICK))
        .isEmpty();
  }

  @Test
  void runIsTooFastForALowerLevel() {
    String run = "D4/0.25 E4/0.25 F#4/0.25 G4/0.25 A4/0.25 B4/0.25 C#5/0.25 D5/0.25 ".repeat(2);
    Scored music = Scored.of("Violin", run).tempo(110);
    assertThat(music.findings("advanced", FindingKind.ABOVE_COMFORTABLE_TEMPO)).isEmpty();
    assertThat(music.findings("beginner", FindingKind.ABOVE_COMFORTABLE_TEMPO)).isNotEmpty();
  }

  @Test
  void highPositionsAreBeyondLowerLevels() {
    assertThat(count("Violin", "F6/4", "beginner", FindingKind.POSITION_BEYOND_LEVEL)).isEqualTo(1);
    assertThat(count("Violin", "B5/4", "beginner", FindingKind.POSITION_BEYOND_LEVEL)).isZero();
    assertThat(count("Violin", "E6/4", "intermediate", FindingKind.POSITION_BEYOND_LEVEL)).isZero();
    assertThat(count("Violin", "B6/4", "intermediate", FindingKind.POSITION_BEYOND_LEVEL))
        .isEqualTo(1);
    assertThat(count("Violin", "B7/4", "advanced", FindingKind.POSITION_BEYOND_LEVEL)).isZero();
  }

  @Test
  void nearbySpotsAreOneFinding() {
    assertThat(
            Scored.of("Violin", "F6/4 | A6/4 | F6/4 | A4/4")
                .findings("beginner", FindingKind.POSITION_BEYOND_LEVEL))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.where()).isEqualTo("m. 1–3");
              assertThat(finding.passage()).isTrue();
              assertThat(finding.reason()).startsWith("A6 needs").contains("2 more places");
              assertThat(finding.notes()).hasSize(1);
            });
  }

  @Test
  void findingNamesOnlyTheMeasuresThatHaveTheProblem() {
    assertThat(
            Scored.of("Violin", "F6/4 | A4/4 | F6/4 | A6/4 | A4/4 | F6/4 | A4/4")
                .findings("beginner", FindingKind.POSITION_BEYOND_LEVEL))
        .extracting(Finding::where)
        .containsExactly("m. 1, 3–4, 6");
    assertThat(
            Scored.of("Violin", "F6/4 | A4/4 | ".repeat(7) + "A4/4")
                .findings("beginner", FindingKind.POSITION_BEYOND_LEVEL))
        .extracting(Finding::where)
        .containsExactly("m. 1–13");
  }

  @Test
  void ofTwoNotesInOnePositionTheHigherOneIsDescribed() {
    assertThat(
            Scored.of("Cello", "[F4] A4/2 C5/2")
                .findings("intermediate", FindingKind.POSITION_BEYOND_LEVEL))
        .extracting(finding -> finding.notes().get(0).written().toString())
        .containsExactly("C5");
    assertThat(
            Scored.of("Cello", "[F4] A5/2 C6/2 A5/4")
                .findings("intermediate", FindingKind.POSITION_BEYOND_LEVEL))
        .extracting(finding -> finding.reason().split(" ", 2)[0])
        .containsExactly("C6");
  }

  @ParameterizedTest
  @CsvSource({
    "Violin, B6/4, 'Write it an octave lower, or add an easier ossia.'",
    "Violin, D7/4, 'Write it two octaves lower, or add an easier ossia.'",
    "Violin, G3+B5/4, Keep one of the notes.",
    "Violins, G3+B5/4, 'Write ''div.'' above it.'",
    "Violins, C6+E6/4, 'Write it lower, or add an easier ossia.'",
  })
  void suggestionLiesInThePositionsOfTheLevel(String part, String music, String suggestion) {
    assertThat(Scored.of(part, music).findings("beginner", FindingKind.POSITION_BEYOND_LEVEL))
        .extracting(finding -> finding.suggestion().orElseThrow())
        .containsExactly(suggestion);
  }

  @Test
  void beginnersOnTheCelloHaveNoExtensions() {
    // E flat on the D string needs a backward extension (common practice, no source).
    assertThat(count("Cello", "[F4] Eb3/4", "beginner", FindingKind.EXTENSION_BEYOND_LEVEL))
        .isEqualTo(1);
    assertThat(count("Cello", "[F4] E3/4", "beginner", FindingKind.EXTENSION_BEYOND_LEVEL))
        .isZero();
    assertThat(count("Cello", "[F4] Eb3/4", "intermediate", FindingKind.EXTENSION_BEYOND_LEVEL))
        .isZero();
  }

  @Test
  void slurCannotSkipAString() {
    String over = "G3/0.25,( E5/0.25,) r/3";
    assertThat(count("Violin", over, "beginner", FindingKind.SLUR_OVER_A_STRING)).isEqualTo(1);
    assertThat(count("Violin", "G3/0.25 E5/0.25 r/3", "beginner", FindingKind.SLUR_OVER_A_STRING))
        .isZero();
    assertThat(
            count("Violin", "A4/0.25,( E5/0.25,) r/3", "beginner", FindingKind.SLUR_OVER_A_STRING))
        .isZero();
    assertThat(count("Violin", "G3/2,( E5/2,)", "beginner", FindingKind.SLUR_OVER_A_STRING))
        .isZero();
  }

  @Test
  void beginnersHaveNoNaturalHarmonics() {
    // The octave harmonic of the A string.
    assertThat(count("Violin", "A5/4,harm", "beginner", FindingKind.HARMONIC_BEYOND_LEVEL))
        .isEqualTo(1);
    assertThat(count("Violin", "A5/4,harm", "intermediate", FindingKind.HARMONIC_BEYOND_LEVEL))
        .isZero();
    assertThat(count("Violin", "A4/4,harm", "beginner", FindingKind.HARMONIC_BEYOND_LEVEL))
        .isZero();
  }

  @Test
  void harmonicThatNoStringHasIsReported() {
    // No open string of the violin has F4 among its partials, and it is too low for a touched
    // fourth.
    assertThat(count("Violin", "F4/4,harm", "advanced", FindingKind.HARMONIC_NOT_THERE))
        .isEqualTo(1);
    assertThat(count("Violin", "D5/4,harm", "advanced", FindingKind.HARMONIC_NOT_THERE)).isZero();
  }

  @Test
  void tremoloOfTwoNotesMustLieUnderOneHand() {
    assertThat(count("Violin", "A4/2,from C5/2,to", "advanced", FindingKind.TREMOLO_TOO_WIDE))
        .isZero();
    assertThat(count("Violin", "B4/2,from G5/2,to", "advanced", FindingKind.TREMOLO_TOO_WIDE))
        .isZero();
    assertThat(count("Violin", "A3/2,from F6/2,to", "advanced", FindingKind.TREMOLO_TOO_WIDE))
        .isEqualTo(1);
  }

  @Test
  void loudBowsAreShorter() {
    String held = "A4/4,- | A4/4,_";
    assertThat(count("Violin", "{pp} " + held, "advanced", FindingKind.BOW_TOO_SHORT)).isZero();
    assertThat(count("Violin", "{ff} " + held, "advanced", FindingKind.BOW_TOO_SHORT)).isEqualTo(1);
    assertThat(count("Violin", "{ff} \"pizz.\" " + held, "advanced", FindingKind.BOW_TOO_SHORT))
        .isZero();
    assertThat(
            count(
                "Violin", "{ff} A4/4,-,trem | A4/4,_,trem", "advanced", FindingKind.BOW_TOO_SHORT))
        .isZero();
    assertThat(
            count(
                "Double Bass",
                "[F4] {f} A2/4,- | A2/2,_ r/2",
                "advanced",
                FindingKind.BOW_TOO_SHORT))
        .isEqualTo(1);
    assertThat(count("Violin", "{f} A4/4,- | A4/2,_ r/2", "advanced", FindingKind.BOW_TOO_SHORT))
        .isZero();
    // After fp the note continues softly.
    assertThat(count("Violin", "{fp} " + held, "advanced", FindingKind.BOW_TOO_SHORT)).isZero();
  }

  private static boolean found(int tempo, String music, FindingKind kind) {
    return !Scored.of("Violin", music).tempo(tempo).findings("advanced", kind).isEmpty();
  }

  @Test
  void bowNeedsTimeToSkipAString() {
    String over = "G3/0.25 E5/0.25 r/3.5";
    assertThat(found(200, over, FindingKind.CROSSING_TOO_QUICK)).isTrue();
    assertThat(found(80, over, FindingKind.CROSSING_TOO_QUICK)).isFalse();
  }

  @Test
  void chordNeedsTime() {
    String chords = "A4/0.25 G3+D4+B4+G5/0.25 A4/0.25 r/3.25";
    assertThat(found(200, chords, FindingKind.CHORD_TOO_QUICK)).isTrue();
    assertThat(found(80, chords, FindingKind.CHORD_TOO_QUICK)).isFalse();
  }

  @Test
  void pizzicatoIsSlowerThanTheBow() {
    String plucked = "\"pizz.\" A4/0.25 A4/0.25 A4/0.25 A4/0.25 r/3";
    assertThat(found(180, plucked, FindingKind.PLUCKED_TOO_QUICK)).isTrue();
    assertThat(found(80, plucked, FindingKind.PLUCKED_TOO_QUICK)).isFalse();
  }

  @Test
  void trillNeedsTime() {
    String trill = "B4/0.25,tr A4/0.5 r/3";
    assertThat(found(180, trill, FindingKind.TRILL_TOO_SHORT)).isTrue();
    assertThat(found(80, trill, FindingKind.TRILL_TOO_SHORT)).isFalse();
  }

  @Test
  void trillInAChordNeedsAFreeFinger() {
    assertThat(
            count("Cello", "[F4] Gb2+Db3+Eb3/4,tr", "advanced", FindingKind.TRILL_WITHOUT_FINGER))
        .isEqualTo(1);
    assertThat(count("Cello", "[F4] Gb2/4,tr", "advanced", FindingKind.TRILL_WITHOUT_FINGER))
        .isZero();
  }
}
