package fingering.playability.rules;

import static org.assertj.core.api.Assertions.as;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import fingering.playability.Finding;
import fingering.playability.FindingKind;
import fingering.playability.Scored;
import fingering.playability.Severity;
import org.junit.jupiter.api.Test;

/** Time for changes, clefs and strings: common practice, no source. */
class ChangeRuleTest {

  private static long count(String music, String level, FindingKind kind) {
    return Scored.of("Violin", music).findings(level, kind).size();
  }

  @Test
  void pizzicatoNeedsARest() {
    assertThat(
            count(
                "A4/1 A4/0.125 \"pizz.\" B4/0.5 r/2", "beginner", FindingKind.CHANGE_TO_PIZZICATO))
        .isEqualTo(1);
    assertThat(count("A4/1 r/2 \"pizz.\" B4/1", "beginner", FindingKind.CHANGE_TO_PIZZICATO))
        .isZero();
    assertThat(count("A4/1 A4/1 \"pizz.\" B4/1", "advanced", FindingKind.CHANGE_TO_PIZZICATO))
        .isZero();
  }

  @Test
  void arcoNeedsTime() {
    String back = "\"pizz.\" A4/0.25 \"arco\" B4/0.75 r/3";
    assertThat(count(back, "beginner", FindingKind.CHANGE_TO_ARCO)).isEqualTo(1);
    assertThat(count("\"pizz.\" A4/1 r/2 \"arco\" B4/1", "beginner", FindingKind.CHANGE_TO_ARCO))
        .isZero();
  }

  @Test
  void muteTakesLongerToPutOnThanToTakeOff() {
    for (String on : new String[] {"con_sord.", "mit_Dämpfer", "avec_sourdine", "with_mute"}) {
      assertThat(count("A4/3 r/1 | \"" + on + "\" A4/4", "advanced", FindingKind.CHANGE_OF_MUTE))
          .as(on)
          .isEqualTo(1);
    }
    for (String off : new String[] {"senza_sord.", "ohne_Dämpfer", "sans_sourdine", "mutes_off"}) {
      assertThat(
              count(
                  "\"con_sord.\" A4/3 r/1 | \"" + off + "\" A4/4",
                  "advanced",
                  FindingKind.CHANGE_OF_MUTE))
          .as(off)
          .isZero();
      assertThat(
              count(
                  "\"con_sord.\" A4/4 | \"" + off + "\" A4/4",
                  "advanced",
                  FindingKind.CHANGE_OF_MUTE))
          .as(off)
          .isEqualTo(1);
    }
  }

  @Test
  void spotsAreNotMergedAcrossMovements() {
    String last = "A4/3.875 \"pizz.\" B4/0.125";
    String first = "\"arco\" A4/1 A4/0.125 \"pizz.\" B4/0.5 r/2";
    assertThat(count(last + " | " + first, "beginner", FindingKind.CHANGE_TO_PIZZICATO))
        .isEqualTo(1);
    assertThat(count(last + " || " + first, "beginner", FindingKind.CHANGE_TO_PIZZICATO))
        .isEqualTo(2);
  }

  @Test
  void thereIsTimeForAMuteBetweenMovements() {
    assertThat(count("A4/4 || \"con_sord.\" A4/4", "beginner", FindingKind.CHANGE_OF_MUTE))
        .isZero();
  }

  @Test
  void muteThatIsOnIsNotPutOnAgain() {
    assertThat(
            count(
                "\"con_sord.\" A4/4 | \"con_sord.\" A4/4", "advanced", FindingKind.CHANGE_OF_MUTE))
        .isZero();
  }

  @Test
  void changeOfInstrumentNeedsTime() {
    assertThat(
            count(
                "A4/4 | r/4 | \"nimmt_Bratsche\" A4/4",
                "advanced",
                FindingKind.CHANGE_OF_INSTRUMENT))
        .isEqualTo(1);
    assertThat(
            count(
                "A4/4 | r/4 | r/4 | \"nimmt_Bratsche\" A4/4",
                "advanced",
                FindingKind.CHANGE_OF_INSTRUMENT))
        .isZero();
  }

  /** MusicXML 4.0, elements scordatura and accord. */
  @Test
  void scordaturaSignCountsLikeWords() {
    String sign =
        "<scordatura><accord_string=\"4\"><tuning-step>A</tuning-step><tuning-octave>3</tuning-octave></accord></scordatura>";
    assertThat(
            Scored.of("Violin", sign + " A4/4")
                .findings("advanced", FindingKind.SCORDATURA_CONFLICT))
        .singleElement()
        .extracting(Finding::reason, as(STRING))
        .contains("'scordatura 4 = A3' asks for another tuning");
  }

  @Test
  void otherTuningIsReportedAndNeedsTime() {
    assertThat(count("\"Scordatura\" A4/4", "advanced", FindingKind.SCORDATURA_CONFLICT))
        .isEqualTo(1);
    assertThat(count("A4/4 | \"Scordatura\" A4/4", "advanced", FindingKind.CHANGE_OF_TUNING))
        .isEqualTo(1);
  }

  @Test
  void clefsThatTheLevelDoesNotReadAreReported() {
    assertThat(Scored.of("Viola", "[C3] A4/4").findings("beginner", FindingKind.CLEF_NOT_USUAL))
        .isEmpty();
    assertThat(Scored.of("Viola", "[G2] A4/4").findings("beginner", FindingKind.CLEF_NOT_USUAL))
        .extracting(Finding::severity)
        .containsExactly(Severity.RISKY);
    assertThat(Scored.of("Viola", "[G2] A4/4").findings("intermediate", FindingKind.CLEF_NOT_USUAL))
        .isEmpty();
  }

  @Test
  void clefThatChangesAgainSoonIsReported() {
    String often = "[F4] A2/4 | [C4] A3/1 [F4] A2/1 r/2";
    assertThat(Scored.of("Cello", often).findings("common-practice", FindingKind.CHANGES_OF_CLEF))
        .hasSize(1);
    assertThat(
            Scored.of("Cello", "[F4] A2/4 | [C4] A3/4 | [F4] A2/4")
                .findings("common-practice", FindingKind.CHANGES_OF_CLEF))
        .isEmpty();
  }

  @Test
  void noteThatIsNotOnTheStringIsReported() {
    assertThat(count("\"sul_G\" C4/1 D4/1 G3/2", "advanced", FindingKind.STRING_WITHOUT_NOTE))
        .isZero();
    assertThat(count("\"sul_E\" C4/1 r/3", "advanced", FindingKind.STRING_WITHOUT_NOTE))
        .isEqualTo(1);
    assertThat(count("C4/4,s1", "advanced", FindingKind.STRING_WITHOUT_NOTE)).isEqualTo(1);
    assertThat(count("C4/4,s4", "advanced", FindingKind.STRING_WITHOUT_NOTE)).isZero();
  }
}
