package fingering.musicxml;

import static fingering.musicxml.ScoreText.START;
import static fingering.musicxml.ScoreText.measure;
import static fingering.musicxml.ScoreText.measureWith;
import static fingering.musicxml.ScoreText.note;
import static fingering.musicxml.ScoreText.part;
import static fingering.musicxml.ScoreText.passage;
import static fingering.musicxml.ScoreText.read;
import static fingering.musicxml.ScoreText.rehearsal;
import static fingering.musicxml.ScoreText.rest;
import static fingering.musicxml.ScoreText.score;
import static fingering.musicxml.ScoreText.violin;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fingering.music.Measure;
import fingering.music.Passage;
import fingering.musicxml.reading.PartInfo;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.tables.Choice;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ChoicesTest {
  private static final String BAR = measure("1", START, note("D5", 16));

  private static final Score QUARTET =
      read(
          score(
              part("Violin 1", "strings.violin", BAR),
              part("Violin 2", "", BAR),
              part("Viola", "", BAR),
              part("Violoncello", "", BAR)));

  private static final Score STUDY =
      read(
          violin(
              measureWith("number=\"0\" implicit=\"yes\"", START, note("D5", 4)),
              measure("1", rehearsal("A"), note("D5", 16)),
              measure("2", note("D5", 8)),
              measureWith("number=\"X1\" implicit=\"yes\"", note("E5", 8)),
              measure("3", rehearsal("B"), note("D5", 16)),
              measure("4", rehearsal("C"), note("D5", 16)),
              measure("1", note("D5", 16)),
              measure("2", rehearsal("D"), rest(16))));

  private static List<Integer> indices(String measures) {
    return STUDY.passage(PassageRequest.WHOLE.withMeasures(measures)).measures().stream()
        .map(Measure::index)
        .toList();
  }

  @Test
  void measuresAreFoundByTheirPrintedNumbers() {
    assertThat(indices("1-3")).containsExactly(1, 2, 3, 4);
    assertThat(indices("4")).containsExactly(5);
    assertThat(indices("3-")).containsExactly(4, 5, 6, 7);
    assertThat(indices("0–1")).containsExactly(0, 1);
  }

  @Test
  void theSecondHalfOfAMeasureCutByARepeatBelongsToIt() {
    assertThat(indices("2")).containsExactly(2, 3);
  }

  @Test
  void measuresThatAreNotCountedAreNamedAfterTheOneBefore() {
    Score endings =
        read(
            violin(
                measureWith("number=\"X1\" implicit=\"yes\"", START, note("D5", 4)),
                measure("24", note("D5", 16)),
                measureWith("number=\"X2\" implicit=\"yes\"", note("E5", 16)),
                measureWith("number=\"X3\" implicit=\"yes\"", note("F5", 16)),
                measure("X4", note("D5", 16)),
                measure("25", note("D5", 16))));

    assertThat(endings.passage(PassageRequest.WHOLE).measures())
        .extracting(Measure::number)
        .containsExactly("X1", "24", "24a", "24b", "X4", "25");
    assertThat(endings.passage(PassageRequest.WHOLE.withMeasures("24b-25")).measures()).hasSize(3);
  }

  @Test
  void measuresAreFoundByRehearsalMarks() {
    assertThat(indices("A to C")).containsExactly(1, 2, 3, 4);
    assertThat(indices("a-b")).containsExactly(1, 2, 3);
    assertThat(indices("B")).containsExactly(4);
    assertThat(indices("C")).containsExactly(5, 6);
    assertThat(indices("B to 4")).containsExactly(4, 5);
  }

  @Test
  void ofTwoMeasuresWithOneNumberTheFirstIsUsedWithARemark() {
    Passage passage = STUDY.passage(PassageRequest.WHOLE.withMeasures("1"));
    assertThat(passage.measures().get(0).index()).isEqualTo(1);
    assertThat(passage.remarks())
        .contains(
            "measure 1 occurs 2 times in the part; the first one is used; for another, write its movement: movement 2, 9-24");
  }

  @Test
  void measuresOfALaterMovementAreFoundByItsNumber() {
    Passage passage = STUDY.passage(PassageRequest.WHOLE.withMeasures("movement 2, 1"));
    assertThat(passage.measures().get(0).index()).isEqualTo(6);
    assertThat(passage.remarks()).contains("movement 2 of 2");
    assertThat(indices("Movement 1: B-")).containsExactly(4, 5);
    assertThat(indices("mvt. 1")).containsExactly(0, 1, 2, 3, 4, 5);
    assertThat(indices("movement 2")).containsExactly(6, 7);
    assertThat(indices("movement 2, 1-2")).containsExactly(6, 7);
  }

  @Test
  void movementsThatDoNotExistAreRefused() {
    assertThatThrownBy(() -> indices("movement 3, 1"))
        .isInstanceOf(SelectionException.class)
        .hasMessage("Violin has no movement 3: its measure numbers begin 2 times.");
    assertThatThrownBy(() -> indices("movement 2, 4"))
        .isInstanceOf(SelectionException.class)
        .hasMessageStartingWith("Violin has no measures '4': it has measures 1 to 2");
  }

  @Test
  void unknownMeasuresAreRefusedWithAList() {
    assertThatThrownBy(() -> indices("99"))
        .isInstanceOf(SelectionException.class)
        .hasMessage(
            "Violin has no measures '99': it has measures 0 to 4, 1 to 2 and rehearsal marks A, B, C, D; choose some of them, as in 9-24 or B-D.");
    assertThatThrownBy(() -> indices("4-3"))
        .isInstanceOf(SelectionException.class)
        .hasMessageStartingWith("In Violin, 3 does not come after 4");
  }

  @Test
  void measuresWithoutNotesAreRefused() {
    assertThatThrownBy(() -> indices("D"))
        .isInstanceOf(SelectionException.class)
        .hasMessage("Violin has no notes in measures 2 to 2: choose other measures.");
  }

  @Test
  void rehearsalMarksOfTheTopPartCountForAllParts() {
    Score duo =
        read(
            score(
                part("Violin", "", BAR, measure("2", rehearsal("A"), note("D5", 16))),
                part("Viola", "", BAR, measure("2", note("D4", 16)))));
    Passage passage = duo.passage(PassageRequest.WHOLE.withPart("Viola").withMeasures("A"));
    assertThat(passage.measures()).hasSize(1);
    assertThat(passage.measures().get(0).rehearsal()).isEqualTo("A");
  }

  @Test
  void partsAreFoundByNumberIdNameBeginningAndWord() {
    assertThat(QUARTET.part("3").name()).isEqualTo("Viola");
    assertThat(QUARTET.part("P4").name()).isEqualTo("Violoncello");
    assertThat(QUARTET.part("VIOLIN 2").number()).isEqualTo(2);
    assertThat(QUARTET.part("violo").number()).isEqualTo(4);
    assertThat(QUARTET.part("cello").number()).isEqualTo(4);
  }

  @Test
  void aNumberMeansThatPartEvenIfAnotherOneIsCalledSo() {
    Score second = read(score(part("2", "", BAR), part("1", "", BAR)));
    assertThat(second.part("1").name()).isEqualTo("2");
    assertThat(second.part("2").name()).isEqualTo("1");
  }

  @Test
  void aPartIsNamedByItsNameUnlessThatFindsAnother() {
    Score odd =
        read(
            score(
                part("Viola", "", BAR),
                part("Violin", "", BAR),
                part("VIOLIN ", "", BAR),
                part("1", "", BAR),
                part("", "", BAR)));

    assertThat(odd.parts().stream().map(odd::nameOrNumber))
        .containsExactly("Viola", "2", "3", "4", "Part 5");
    assertThat(odd.parts()).allMatch(part -> odd.part(odd.nameOrNumber(part)).equals(part));
  }

  @Test
  void partsAndPassagesOfAnotherScoreAreRejected() {
    Passage passage = STUDY.passage(PassageRequest.WHOLE.withMeasures("1-2"));
    PartInfo part = STUDY.parts().get(0);

    assertThat(STUDY.printed(passage, Optional.empty()).measures()).hasSize(3);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> QUARTET.printed(passage, Optional.empty()));
    assertThatIllegalArgumentException().isThrownBy(() -> QUARTET.hasNotes(part));
    assertThatIllegalArgumentException().isThrownBy(() -> QUARTET.readable(part));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> QUARTET.passage(part, PassageRequest.WHOLE, one -> one));
  }

  @Test
  void aNameOfSeveralPartsIsRefusedWithAList() {
    assertThatThrownBy(() -> QUARTET.part("violin"))
        .isInstanceOf(SelectionException.class)
        .hasMessage(
            "'Study' has 2 parts called 'violin'; choose one by its number: 1 Violin 1, 2 Violin 2.");
    assertThatThrownBy(() -> QUARTET.part("flute")).hasMessageContaining("3 Viola, 4 Violoncello.");
  }

  @Test
  void withoutAChoiceTheOnlyPartForTheInstrumentIsUsed() {
    Instruments instruments = Instruments.standard();
    PassageRequest viola = PassageRequest.WHOLE.withInstrument(instruments.named("viola"));
    assertThat(QUARTET.passage(viola).partName()).isEqualTo("Viola");
    assertThatThrownBy(() -> QUARTET.passage(PassageRequest.WHOLE))
        .isInstanceOf(SelectionException.class)
        .hasMessage(
            "'Study' has 4 parts; choose one: 1 Violin 1, 2 Violin 2, 3 Viola, 4 Violoncello.");
    Score sonata = read(score(part("Piano", "keyboard.piano", BAR), part("Violino", "", BAR)));
    assertThat(sonata.passage(PassageRequest.WHOLE).partName()).isEqualTo("Violino");
  }

  private static Instrument fiveStrings(Instrument viola) {
    return viola.tuned(Instruments.standard().tuning(viola, "five-string"));
  }

  @Test
  void thePartForAnInstrumentIsFoundInAnyTuning() {
    Instrument viola = fiveStrings(Instruments.standard().named("viola"));
    Passage passage = QUARTET.passage(PassageRequest.WHOLE.withInstrument(viola));
    assertThat(passage.partName()).isEqualTo("Viola");
    assertThat(passage.instrument()).isEqualTo(viola);
    assertThat(QUARTET.onlyPart(Optional.of(viola)).name()).isEqualTo("Viola");
  }

  @Test
  void theInstrumentOfAPartMayBeRetuned() {
    Passage passage =
        QUARTET.passage(PassageRequest.WHOLE.withPart("Viola"), ChoicesTest::fiveStrings);
    assertThat(passage.instrument().strings()).hasSize(5);
    assertThat(passage.remarks())
        .contains(
            "the tuning is 'five-string' (E5 A4 D4 G3 C3) and the notes are read at sounding pitch; plan a part that is written as fingered in the usual tuning");
  }

  @Test
  void aRetunedInstrumentGuessedByItsClefKeepsItsRemark() {
    String altoClef = BAR.replace("<sign>G</sign><line>2</line>", "<sign>C</sign><line>3</line>");
    Passage passage =
        read(score(part("Solo", "", altoClef)))
            .passage(PassageRequest.WHOLE, ChoicesTest::fiveStrings);
    assertThat(passage.remarks()).anyMatch(remark -> remark.contains("by its first clef"));
  }

  @Test
  void theClefShowsTheInstrumentIfNothingElseDoes() {
    String altoClef = BAR.replace("<sign>G</sign><line>2</line>", "<sign>C</sign><line>3</line>");
    Passage passage = passage(score(part("Solo", "", altoClef)));
    assertThat(passage.instrument().id()).isEqualTo("viola");
    assertThat(passage.remarks()).anyMatch(remark -> remark.contains("by its first clef"));
  }

  @Test
  void aPartWithoutInstrumentIsRefused() {
    String noClef = BAR.replaceAll("<clef>.*</clef>", "");
    assertThatThrownBy(() -> passage(score(part("Solo", "", noClef))))
        .isInstanceOfSatisfying(
            SelectionException.class,
            refused -> assertThat(refused.choices()).containsExactly(Choice.INSTRUMENT));
  }

  @Test
  void anUnknownVoiceIsRefusedWithAList() {
    assertThatThrownBy(() -> STUDY.passage(PassageRequest.WHOLE.withVoice("5")))
        .isInstanceOf(SelectionException.class)
        .hasMessage("Violin has no voice '5'; choose one: 1.");
  }

  @Test
  void aPercussionPartIsRefused() {
    String drum = "<note><unpitched/><duration>16</duration><voice>1</voice></note>";
    assertThatThrownBy(() -> passage(score(part("Violin", "", measure("1", START, drum)))))
        .isInstanceOf(UnreadableScoreException.class)
        .hasMessageContaining("percussion part");
  }

  @Test
  void otherRootsAreRefusedWithAdvice() {
    assertThatThrownBy(() -> read("<opus/>"))
        .isInstanceOf(UnreadableScoreException.class)
        .hasMessageContaining("choose one of the scores");
    assertThatThrownBy(() -> read("<html/>")).hasMessageContaining("contains <html>");
    assertThatThrownBy(() -> read("<score-partwise><part-list/></score-partwise>"))
        .hasMessageContaining("no part");
  }

  @Test
  void malformedXmlIsRefusedWithItsPlace() {
    assertThatThrownBy(() -> read(violin(BAR).replace("</part>", "")))
        .isInstanceOf(UnreadableScoreException.class)
        .hasMessageContaining("not well-formed XML at line 2");
  }

  @Test
  void aDocumentTypeIsNeitherLoadedNorExpanded() {
    String doctype =
        "<!DOCTYPE score-partwise PUBLIC \"-//Recordare//DTD MusicXML 4.0 Partwise//EN\" \"http://localhost:1/none.dtd\" [<!ENTITY e SYSTEM \"file:///etc/passwd\">]>";
    Score score =
        read(
            violin(BAR)
                .replace("<score-partwise", doctype + "<score-partwise")
                .replace("Study", "Study &e;"));
    assertThat(score.title()).isEqualTo("Study");
  }

  @Test
  void aTitleWithAnAmpersandIsReadAsWritten() {
    assertThat(read(violin(BAR).replace("Study", "Bow &amp; Hand &#233;")).title())
        .isEqualTo("Bow & Hand é");
  }

  @Test
  void extremeNumbersAreNotReadInsteadOfFillingTheMemory() {
    String wild = BAR.replace("<duration>16<", "<duration>1e999999999<");
    assertThat(passage(violin(wild)).remarks())
        .anyMatch(remark -> remark.contains("has no readable duration"));
    String tempo = BAR.replace("<note>", "<sound tempo=\"1e-999999999\"/><note>");
    assertThat(passage(violin(tempo)).tempo()).hasToString("quarter=96");
  }
}
