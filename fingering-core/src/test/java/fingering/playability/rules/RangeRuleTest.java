package fingering.playability.rules;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.playability.Finding;
import fingering.playability.FindingKind;
import fingering.playability.ScoreCheck;
import fingering.playability.Scored;
import fingering.playability.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Ranges in S. Adler, The Study of Orchestration, and W. Piston, Orchestration, from memory: the
 * open strings, and the highest notes that both allow in an orchestra.
 */
class RangeRuleTest {

  @ParameterizedTest
  @CsvSource({
    "Violin, G3, F#3, E7",
    "Viola, C3, B2, A6",
    "Violoncello, C2, B1, E6",
    "Contrabass, E2, Eb2, G4", // written an octave above its sound
  })
  void handbookRangesAreInRangeAndNotesBelowAreNot(
      String part, String lowest, String below, String highest) {
    assertThat(found(part, lowest)).isEmpty();
    assertThat(found(part, highest)).isEmpty();
    assertThat(found(part, below))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.notes()).hasSize(1);
              assertThat(finding.reason()).contains("is below the lowest string");
              assertThat(finding.suggestion()).isPresent();
              assertThat(finding.where()).isEqualTo("m. 1, beat 1");
            });
  }

  private static java.util.List<Finding> found(String part, String note) {
    Scored score = part.equals("Contrabass") ? Scored.score().octaveLower() : Scored.score();
    return score.part(part, note + "/1 r/3").findings("advanced", FindingKind.OUT_OF_RANGE);
  }

  @ParameterizedTest
  @CsvSource({
    "Violin, F#3, an octave higher",
    "Violin, F2, two octaves higher",
    "Violin, B7, two octaves lower",
    "Violin, C9, 3 octaves lower",
    "Viola, B2, an octave higher",
  })
  void suggestionCanBePlayedAtTheLevel(String part, String note, String move) {
    assertThat(Scored.of(part, note + "/4").findings("intermediate", FindingKind.OUT_OF_RANGE))
        .extracting(finding -> finding.suggestion().orElseThrow())
        .satisfiesExactly(text -> assertThat(text).startsWith("Write it " + move + ", or give"));
  }

  @Test
  void notesInRangeAreStillChecked() {
    ScoreCheck check = Scored.of("Violin", "C9/1 A4/1 F3/1 r/1 | A3+B3/1 r/3").check("advanced");
    assertThat(check.findings())
        .extracting(Finding::kind)
        .containsExactly(FindingKind.OUT_OF_RANGE, FindingKind.CHORD_NO_HAND);
    assertThat(check.mostSevere()).contains(Severity.UNPLAYABLE);
    assertThat(check.parts().get(0).notes()).isEqualTo(5);
  }

  @Test
  void partWithoutNotesInRangeIsChecked() {
    ScoreCheck check = Scored.of("Violin", "C2/1 D2/1 E2/1 F2/1").check("beginner");
    assertThat(check.findings()).hasSize(1);
    assertThat(check.parts().get(0).difficulty().grade()).isEqualTo(1);
  }

  @Test
  void someBassesHaveALowC() {
    // S. Adler, from memory: an extension or a fifth string takes some basses down to C.
    Scored music = Scored.score().octaveLower().part("Double Bass", "D2/1 r/3 | B1/1 r/3");
    assertThat(music.findings("advanced", FindingKind.OUT_OF_RANGE))
        .extracting(Finding::severity)
        .containsExactly(Severity.RISKY, Severity.RISKY);
    assertThat(music.findings("intermediate", FindingKind.OUT_OF_RANGE))
        .allSatisfy(
            finding -> {
              assertThat(finding.severity()).isEqualTo(Severity.UNPLAYABLE);
              assertThat(finding.suggestion().orElseThrow()).contains("an octave higher");
            });
  }
}
