package fingering.playability.rules;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.playability.Finding;
import fingering.playability.FindingKind;
import fingering.playability.Forces;
import fingering.playability.Scored;
import fingering.playability.Severity;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Double stops and chords: common practice, no source, unless one is named. */
class ChordRuleTest {
  private static final String SAME_STRING = "A3+B3/2 r/2";

  /** A chord in N. Rimsky-Korsakov's table of three-note chords (from memory). */
  private static final String TABLE_CHORD = "G3+D4+B4/1 r/3";

  @Test
  void twoNotesOnOneStringAreUnplayableForOnePlayer() {
    assertThat(
            Scored.of("Violin", SAME_STRING)
                .findings("advanced", Forces.ONE_PLAYER, FindingKind.CHORD_NO_HAND))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.severity()).isEqualTo(Severity.UNPLAYABLE);
              assertThat(finding.reason())
                  .isEqualTo("Both notes of A3+B3 need the same string of the violin.");
              assertThat(finding.suggestion()).contains("Leave out B3.");
            });
  }

  @Test
  void sectionDividesTwoNotesOnOneString() {
    Scored music = Scored.of("Violins", SAME_STRING);
    assertThat(music.findings("advanced", FindingKind.CHORD_NO_HAND))
        .extracting(Finding::severity, finding -> finding.suggestion().orElse(""))
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(Severity.WORTH_KNOWING, "Write 'div.' above it."));
    assertThat(music.findings("beginner", FindingKind.CHORD_NO_HAND))
        .extracting(Finding::severity)
        .containsExactly(Severity.RISKY);
    assertThat(Scored.of("Violins", "\"div.\" " + SAME_STRING).check("advanced").findings())
        .isEmpty();
    assertThat(Scored.of("Violins", "A3/2 r/2 & B3/2").check("advanced").findings()).isEmpty();
  }

  @Test
  void soloistOfASectionDoesNotDivide() {
    assertThat(
            Scored.of("Violins", "\"solo\" " + SAME_STRING)
                .findings("advanced", FindingKind.CHORD_NO_HAND))
        .extracting(Finding::severity)
        .containsExactly(Severity.UNPLAYABLE);
    assertThat(
            Scored.of("Violins", "\"solo\" G4/4 | \"tutti\" " + SAME_STRING)
                .findings("advanced", FindingKind.CHORD_NO_HAND))
        .extracting(Finding::severity)
        .containsExactly(Severity.WORTH_KNOWING);
  }

  @Test
  void chordOfTheTableIsPlayable() {
    assertThat(Scored.of("Violin", TABLE_CHORD).check("advanced").findings()).isEmpty();
  }

  @Test
  void chordBrokenByAMovingHandIsWorthKnowing() {
    assertThat(
            Scored.of("Violoncello", "[F4] Db2+B2+A3/1 r/3")
                .findings("advanced", FindingKind.CHORD_NO_HAND))
        .extracting(Finding::severity)
        .containsExactly(Severity.WORTH_KNOWING);
  }

  @Test
  void moreNotesThanStringsAreUnplayable() {
    assertThat(
            Scored.of("Violin", "G3+D4+B4+E5+G5/1 r/3")
                .findings("advanced", FindingKind.CHORD_NO_HAND))
        .singleElement()
        .satisfies(
            finding ->
                assertThat(finding.reason())
                    .contains("has more notes than the violin has strings"));
  }

  @Test
  void longChordIsNotSustained() {
    assertThat(
            Scored.of("Violin", "G3+D4+B4+G5/4").findings("advanced", FindingKind.CHORD_NOT_HELD))
        .hasSize(1);
    assertThat(
            Scored.of("Violin", "G3+D4+B4+G5/1 r/3")
                .findings("advanced", FindingKind.CHORD_NOT_HELD))
        .isEmpty();
    assertThat(Scored.of("Violin", "D4+B4/4").findings("advanced", FindingKind.CHORD_NOT_HELD))
        .isEmpty();
  }

  @Test
  void heldNoteOnTheSameStringIsCutShort() {
    assertThat(
            Scored.of("Violin", "A3/4 & r/1 B3/3")
                .findings("advanced", FindingKind.HELD_NOTE_LET_GO))
        .hasSize(1);
    assertThat(
            Scored.of("Violin", "A3/4 & r/1 F4/3")
                .findings("advanced", FindingKind.HELD_NOTE_LET_GO))
        .isEmpty();
  }

  @Test
  void chordThatMustBeDividedIsOneFinding() {
    // Three strings, and a double stop that only a higher position has.
    for (String chord : List.of("C3+G3+E4/4", "C3+C5/4")) {
      assertThat(Scored.of("Violas", chord).check("intermediate").findings())
          .singleElement()
          .satisfies(
              finding -> assertThat(finding.suggestion()).contains("Write 'div.' above it."));
    }
    assertThat(
            Scored.of("Violas", "C3+G3+E4/4")
                .findings("intermediate", FindingKind.DOUBLE_STOP_BEYOND_LEVEL))
        .extracting(Finding::reason)
        .singleElement()
        .asString()
        .startsWith("C3+G3+E4 needs 3 strings at once, 1 of them stopped, which players");
  }

  @Test
  void beginnersPlayDoubleStopsWithAnOpenString() {
    assertThat(
            Scored.of("Violin", "D4+B4/2 r/2")
                .findings("beginner", FindingKind.DOUBLE_STOP_BEYOND_LEVEL))
        .isEmpty();
    Scored stopped = Scored.of("Violin", "E4+C5/2 r/2");
    assertThat(stopped.findings("beginner", FindingKind.DOUBLE_STOP_BEYOND_LEVEL)).hasSize(1);
    assertThat(stopped.findings("intermediate", FindingKind.DOUBLE_STOP_BEYOND_LEVEL)).isEmpty();
  }

  @Test
  void undividedNotesOfASectionNeedAMark() {
    assertThat(
            Scored.of("Violins", "D4+B4/2 r/2").findings("advanced", FindingKind.DIVISI_NOT_MARKED))
        .hasSize(1);
    for (String words : new String[] {"div.", "non_div.", "geteilt", "divisés", "nicht_geteilt"}) {
      assertThat(
              Scored.of("Violins", "\"" + words + "\" D4+B4/2 r/2")
                  .findings("advanced", FindingKind.DIVISI_NOT_MARKED))
          .as(words)
          .isEmpty();
    }
    assertThat(
            Scored.of("Violins", "\"div.\" D4+B4/2 \"unis.\" D4+B4/2")
                .findings("advanced", FindingKind.DIVISI_NOT_MARKED))
        .hasSize(1);
  }

  @Test
  void eachLineOfADividedSectionIsChecked() {
    assertThat(
            Scored.of("Violins", "\"div.\" A4+A6/4 | \"unis.\" A4/4")
                .findings("intermediate", FindingKind.POSITION_BEYOND_LEVEL))
        .hasSize(1);
    assertThat(Scored.of("Violins", "A4/4 & F3/4").findings("advanced", FindingKind.OUT_OF_RANGE))
        .hasSize(1);
  }

  @Test
  void dividedPassageNeedsAnEnd() {
    String single = " A4/4 | A4/4 | A4/4 | A4/4 | A4/4 | A4/4";
    assertThat(
            Scored.of("Violins", "\"div.\" D4+B4/4 |" + single)
                .findings("advanced", FindingKind.DIVISI_NOT_ENDED))
        .hasSize(1);
    assertThat(
            Scored.of("Violins", "\"div.\" D4+B4/4 | \"unis.\"" + single)
                .findings("advanced", FindingKind.DIVISI_NOT_ENDED))
        .isEmpty();
  }
}
