package fingering.musicxml;

import static fingering.musicxml.ScoreText.START;
import static fingering.musicxml.ScoreText.backup;
import static fingering.musicxml.ScoreText.direction;
import static fingering.musicxml.ScoreText.measure;
import static fingering.musicxml.ScoreText.note;
import static fingering.musicxml.ScoreText.passage;
import static fingering.musicxml.ScoreText.rest;
import static fingering.musicxml.ScoreText.violin;
import static fingering.musicxml.ScoreText.words;
import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.Moment;
import fingering.music.Passage;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Elements: MusicXML 4.0, element technical. Words: common practice, no source. */
class LeftHandPizzicatoTest {

  private static List<Boolean> left(Passage passage) {
    return passage.notes().stream().map(note -> note.marks().leftPlucked()).toList();
  }

  private static List<Boolean> plucked(Passage passage) {
    return passage.moments().stream().map(Moment::pizzicato).toList();
  }

  private static Passage withTechnical(String element) {
    return passage(violin(measure("1", START, note("A4", 8).technical(element), note("E5", 8))));
  }

  private static Passage withWords(String text) {
    return passage(
        violin(
            measure(
                "1", START, note("A4", 4), words(text), note("E5", 4), note("A4", 4), rest(4))));
  }

  @Test
  void thePlusSignIsLeftHandPizzicatoForItsNoteOnly() {
    Passage passage = withTechnical("<stopped/>");
    assertThat(left(passage)).containsExactly(true, false);
    assertThat(plucked(passage)).containsOnly(false);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<other-technical>l.h. pizz.</other-technical>",
        "<other-technical smufl=\"pluckedLeftHandPizzicato\"/>"
      })
  void otherTechnicalSignsMayNameTheLeftHand(String element) {
    assertThat(left(withTechnical(element))).containsExactly(true, false);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "l.h. pizz.",
        "L.H. pizz",
        "(l. h. pizz.)",
        "lh pizz.",
        "left hand pizz.",
        "left-hand pizzicato",
        "pizz. l.h.",
        "pizz. (left hand)",
        "pizz. m.s.",
        "pizz. M. S.",
        "m.s. pizz.",
        "m.g. pizz.",
        "mano sinistra pizz.",
        "pizz. con la mano sinistra",
        "pizz. main gauche",
        "pizz. linke Hand",
        "(l.h.) pizz.",
        "+"
      })
  void wordsForTheLeftHandApplyToOneMoment(String text) {
    Passage passage = withWords(text);
    assertThat(left(passage)).containsExactly(false, true, false);
    assertThat(plucked(passage)).containsOnly(false);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "pizz.",
        "pizz. l.v.",
        "pizz. molto",
        "pizz. mf",
        "Pizzicato sempre",
        "pizz. sino al segno"
      })
  void otherWordsThatBeginWithPizzicatoAreForTheRightHand(String text) {
    Passage passage = withWords(text);
    assertThat(left(passage)).containsOnly(false);
    assertThat(plucked(passage)).containsExactly(false, true, true);
  }

  @ParameterizedTest
  @ValueSource(strings = {"col legno", "con sordino", "left", "l.h.", "m.s.", "sul pont.", "legno"})
  void wordsOnOtherMattersChangeNothing(String text) {
    Passage passage = withWords(text);
    assertThat(left(passage)).containsOnly(false);
    assertThat(plucked(passage)).containsOnly(false);
  }

  @Test
  void wordsSeparatedByAChangeOfTypefaceAreReadTogether() {
    Passage passage =
        passage(
            violin(
                measure(
                    "1",
                    START,
                    direction("<words>l.h.</words><words font-style=\"italic\">pizz.</words>"),
                    note("A4", 8),
                    note("E5", 8))));
    assertThat(left(passage)).containsExactly(true, false);
    assertThat(plucked(passage)).containsOnly(false);
  }

  @Test
  void thePlaybackDataOfTheseWordsChangeNothingElse() {
    String direction =
        "<direction><direction-type><words>l.h. pizz.</words></direction-type>"
            + "<sound pizzicato=\"yes\"/></direction>";
    Passage passage = passage(violin(measure("1", START, direction, note("A4", 8), note("E5", 8))));
    assertThat(plucked(passage)).containsOnly(false);
  }

  @Test
  void wordsForOneVoiceApplyToItsNotesOnly() {
    String direction =
        "<direction><direction-type><words>l.h. pizz.</words></direction-type>"
            + "<voice>2</voice></direction>";
    Passage passage =
        passage(
            violin(
                measure(
                    "1", START, note("A5", 16), backup(16), direction, note("E4", 16).voice("2"))));
    assertThat(left(passage)).containsExactly(true, false);
    assertThat(passage.notes().get(0).sounding()).hasToString("E4");
  }

  @Test
  void wordsInARestMarkNothing() {
    Passage passage =
        passage(violin(measure("1", START, words("l.h. pizz."), rest(8), note("E5", 8))));
    assertThat(left(passage)).containsOnly(false);
  }

  @Test
  void aSnapPizzicatoIsPluckedForItsNoteOnly() {
    assertThat(plucked(withTechnical("<snap-pizzicato/>"))).containsExactly(true, false);
    assertThat(left(withTechnical("<snap-pizzicato/>"))).containsOnly(false);
  }

  @ParameterizedTest
  @ValueSource(strings = {"snap pizz.", "Bartók pizz.", "Bartok-pizz."})
  void wordsForASnapApplyToOneMoment(String text) {
    assertThat(plucked(withWords(text))).containsExactly(false, true, false);
  }

  @Test
  void theMarksOfAUnisonOfTwoVoicesAreCombined() {
    Passage passage =
        passage(
            violin(
                measure(
                    "1",
                    START,
                    note("A4", 16).notation("<ornaments><trill-mark/></ornaments>"),
                    backup(16),
                    note("A4", 16).voice("2").technical("<stopped/>"))));
    assertThat(left(passage)).containsExactly(true);
    assertThat(passage.notes().get(0).marks().trill()).isPresent();
  }
}
