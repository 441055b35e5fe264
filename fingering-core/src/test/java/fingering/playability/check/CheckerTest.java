package fingering.playability.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fingering.musicxml.SelectionException;
import fingering.musicxml.reading.PartInfo;
import fingering.playability.CheckLevel;
import fingering.playability.CheckRequest;
import fingering.playability.Difficulty;
import fingering.playability.Finding;
import fingering.playability.FindingKind;
import fingering.playability.Forces;
import fingering.playability.PartCheck;
import fingering.playability.ScoreCheck;
import fingering.playability.Scored;
import fingering.playability.Severity;
import fingering.tables.Instruments;
import fingering.tables.Tuning;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CheckerTest {

  @ParameterizedTest
  @CsvSource({
    "Violin I, violin",
    "Vl. 2, violin",
    "Vni II, violin",
    "Geigen, violin",
    "Violons, violin",
    "Solo Violin, violin",
    "1. Violine, violin",
    "Violini primi, violin",
    "Bratsche, viola",
    "Vle, viola",
    "Viola solo, viola",
    "Altos, viola",
    "Violoncelle, cello",
    "Vc., cello",
    "Violoncelli, cello",
    "Cello div., cello",
    "Kontrabass, bass",
    "Contrebasses, bass",
    "Bassi, bass",
    "Cb., bass",
  })
  void stringPartsAreRecognisedInFourLanguages(String name, String instrument) {
    String clef = instrument.equals("viola") ? "[C3] " : instrument.equals("bass") ? "[F4] " : "";
    assertThat(Scored.of(name, clef + "A3/4").check("advanced").parts())
        .singleElement()
        .satisfies(part -> assertThat(part.instrument().id()).isEqualTo(instrument));
  }

  @Test
  void otherPartsAreLeftOutAndListed() {
    ScoreCheck check =
        Scored.score()
            .part("Flute", "A5/4")
            .part("Violin", "A4/4")
            .part("Alto", "A4/4")
            .part("Part 4", "A4/4")
            .check("advanced");
    assertThat(check.parts()).extracting(part -> part.part().name()).containsExactly("Violin");
    assertThat(check.leftOut())
        .extracting(PartInfo::name)
        .containsExactly("Flute", "Alto", "Part 4");
  }

  @Test
  void altoInAltoClefIsAViola() {
    assertThat(Scored.of("Alto", "[C3] A4/4").check("advanced").parts()).hasSize(1);
    assertThat(Scored.of("Alto", "[G2] A4/4").check("advanced").parts()).isEmpty();
    assertThat(Scored.score().part("Alto", "strings.viola", "[G2] A4/4").check("advanced").parts())
        .hasSize(1);
  }

  @Test
  void partWithoutNotesIsLeftOut() {
    ScoreCheck check = Scored.score().part("Violin", "A4/4").part("Viola", "r/4").check("advanced");
    assertThat(check.parts()).hasSize(1);
    assertThat(check.remarks()).contains("Viola has no notes to finger and was not checked");
  }

  @Test
  void scoreWithoutStringPartsHasARemark() {
    ScoreCheck check = Scored.of("Flute", "A5/4").check("advanced");
    assertThat(check.findings()).isEmpty();
    assertThat(check.mostSevere()).isEmpty();
    assertThat(check.hardest()).isEmpty();
    assertThat(check.remarks())
        .anySatisfy(remark -> assertThat(remark).contains("no part was recognised"));
  }

  @Test
  void namedPartsAreCheckedForTheInstrumentNamed() {
    Checker checker = Checker.of(CheckLevel.preset("advanced"));
    CheckRequest request =
        CheckRequest.WHOLE.withParts(List.of("Flute"), Instruments.standard().named("violin"));
    assertThat(checker.check(Scored.of("Flute", "F3/4").read(), request).findings())
        .extracting(Finding::kind)
        .containsExactly(FindingKind.OUT_OF_RANGE);
    assertThatThrownBy(
            () ->
                checker.check(
                    Scored.of("Violin", "A4/4").read(),
                    CheckRequest.WHOLE.withParts(List.of("Tuba"))))
        .isInstanceOf(SelectionException.class);
  }

  /** Recognised parts keep their own instruments, so an instrument without parts has no meaning. */
  @Test
  void instrumentWithoutPartsIsRefused() {
    assertThatThrownBy(
            () -> CheckRequest.WHOLE.withParts(List.of(), Instruments.standard().named("violin")))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void stringTunedUpLosesItsLowestNote() {
    Instruments instruments = Instruments.standard();
    Tuning up = instruments.tuning(instruments.named("violin"), "a-e-a-e");
    assertThat(
            Checker.of(CheckLevel.preset("advanced"))
                .check(
                    Scored.of("Violin", "G3/4").read(),
                    CheckRequest.WHOLE.withSetup(instrument -> instrument.tuned(up)))
                .findings())
        .extracting(Finding::kind)
        .containsExactly(FindingKind.SCORDATURA_CONFLICT);
  }

  @Test
  void stringOrchestraHasSectionsAndQuartetSinglePlayers() {
    Scored quartet =
        Scored.score()
            .part("Violin I", "A4/4")
            .part("Violin II", "A4/4")
            .part("Viola", "[C3] A4/4")
            .part("Violoncello", "[F4] A3/4");
    assertThat(quartet.check("advanced").parts())
        .extracting(PartCheck::forces)
        .containsOnly(Forces.ONE_PLAYER);
    assertThat(quartet.part("Contrabass", "[F4] A3/4").check("advanced").parts())
        .extracting(PartCheck::forces)
        .containsOnly(Forces.SECTION);
    assertThat(
            Scored.score()
                .part("Solo Violin", "A4/4")
                .part("Violins", "A4/4")
                .check("advanced")
                .parts())
        .extracting(PartCheck::forces)
        .containsExactly(Forces.ONE_PLAYER, Forces.SECTION);
  }

  /** Students of a school play in an orchestra without a bass, but a quartet is a quartet. */
  @Test
  void ensembleOfStudentsHasSectionsUnlessItIsAQuartetOrSmaller() {
    assertThat(forces("beginner", "Violin I", "Violin II")).containsOnly(Forces.ONE_PLAYER);
    String[] trio = {"Violin I", "Violin II", "Violin III"};
    assertThat(forces("beginner", trio)).containsOnly(Forces.SECTION);
    assertThat(forces("intermediate", trio)).containsOnly(Forces.SECTION);
    assertThat(forces("common-practice", trio)).containsOnly(Forces.ONE_PLAYER);
    assertThat(forces("beginner", "Violin I", "Violin II", "Viola", "Violoncello"))
        .containsOnly(Forces.ONE_PLAYER);
    assertThat(forces("beginner", "Violin I", "Violin II", "Viola", "Violoncello", "Piano"))
        .containsOnly(Forces.SECTION);
  }

  private static List<Forces> forces(String level, String... parts) {
    Scored score = Scored.score();
    for (String part : parts) {
      score.part(part, "A4/4");
    }
    return score.check(level).parts().stream().map(PartCheck::forces).toList();
  }

  @Test
  void celloAndBassOnOneStaffAreReported() {
    assertThat(
            Scored.of("Violoncelli e Contrabbassi", "[F4] A3/4")
                .findings("advanced", FindingKind.SHARED_PART))
        .hasSize(1);
    assertThat(Scored.of("Violoncelli", "[F4] A3/4").findings("advanced", FindingKind.SHARED_PART))
        .isEmpty();
  }

  @Test
  void checkerFindsTheSameAgain() {
    Checker checker = Checker.of(CheckLevel.preset("beginner"));
    Scored music = Scored.of("Violin", "A4/0.25 A6/0.25 G3+A3/0.5 F3/1 r/2").tempo(120);
    assertThat(checker.check(music.read()).findings())
        .isNotEmpty()
        .isEqualTo(checker.check(music.read()).findings());
  }

  @Test
  void findingsAreSortedByPlace() {
    List<Finding> findings =
        Scored.of("Violin", "A4/4 | F3/4 | A6/4 | F3/4").check("beginner").findings();
    assertThat(findings).isSortedAccordingTo(Finding.BY_PLACE);
    assertThat(Severity.UNPLAYABLE.atLeast(Severity.RISKY)).isTrue();
    assertThat(Severity.WORTH_KNOWING.atLeast(Severity.RISKY)).isFalse();
  }

  @Test
  void kindsHaveIdsAndOneSentenceExplanations() {
    assertThat(FindingKind.values())
        .allSatisfy(
            kind -> {
              assertThat(kind.id()).matches("[a-z]+(-[a-z]+)*");
              assertThat(kind.explanation()).matches("[A-Z][^.]*\\.");
            });
  }

  @Test
  void scaleInFirstPositionIsEasierThanAVirtuosoPassage() {
    Difficulty easy = difficulty("A4/1 B4/1 C#5/1 D5/1 | E5/1 D5/1 C#5/1 B4/1");
    Difficulty hard =
        difficulty("A4+C#5/0.25 A6/0.25 E7/0.25 C5+A5/0.25 ".repeat(4) + "| D7/1 r/3");
    assertThat(easy.grade()).isLessThanOrEqualTo(2);
    assertThat(hard.grade()).isGreaterThan(easy.grade() + 4);
    assertThat(hard.components())
        .hasSize(7)
        .isSortedAccordingTo((a, b) -> Double.compare(b.grade(), a.grade()));
  }

  private static Difficulty difficulty(String music) {
    return Scored.of("Violin", music).tempo(120).check("advanced").parts().get(0).difficulty();
  }
}
