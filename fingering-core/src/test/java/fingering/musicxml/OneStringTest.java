package fingering.musicxml;

import static fingering.musicxml.ScoreText.START;
import static fingering.musicxml.ScoreText.backup;
import static fingering.musicxml.ScoreText.direction;
import static fingering.musicxml.ScoreText.measure;
import static fingering.musicxml.ScoreText.note;
import static fingering.musicxml.ScoreText.passage;
import static fingering.musicxml.ScoreText.read;
import static fingering.musicxml.ScoreText.rest;
import static fingering.musicxml.ScoreText.violin;
import static fingering.musicxml.ScoreText.words;
import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.Passage;
import fingering.music.PrintedString;
import fingering.music.PrintedString.End;
import fingering.musicxml.reading.PassageRequest;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How long words for one string hold: common practice, no source. Lines: MusicXML 4.0. */
class OneStringTest {
  /** The written notes that must be played on one string, with its number. */
  private static List<String> held(Passage passage) {
    List<String> held = new ArrayList<>();
    passage
        .notes()
        .forEach(
            note -> {
              for (PrintedString asked : passage.stringWords()) {
                if (asked.notes().contains(note.address())) {
                  held.add(note.written() + " on " + asked.string());
                }
              }
            });
    return held;
  }

  private static Passage in(Object... content) {
    Object[] all = new Object[content.length + 1];
    all[0] = START;
    System.arraycopy(content, 0, all, 1, content.length);
    return passage(violin(measure("1", all)));
  }

  private static End end(Passage passage) {
    return passage.stringWords().get(0).end();
  }

  @Test
  void wordsHoldFromTheirNoteToTheEnd() {
    Passage passage = in(note("A3", 4), words("sul G"), note("B3", 4), note("C4", 4));
    assertThat(held(passage)).containsExactly("B3 on 4", "C4 on 4");
    assertThat(end(passage)).isEqualTo(End.PART);
  }

  @Test
  void theNextStringEndsThePreviousOne() {
    Passage passage = in(words("sul G"), note("D4", 4), words("sul D"), note("E4", 4));
    assertThat(held(passage)).containsExactly("D4 on 4", "E4 on 3");
    assertThat(passage.stringWords())
        .extracting(PrintedString::end)
        .containsExactly(End.WORDS, End.PART);
  }

  @ParameterizedTest
  @ValueSource(strings = {"loco", "tutte le corde", "ord.", "nat.", "sul D e G"})
  void wordsThatFreeTheStringsEndIt(String back) {
    Passage passage = in(words("sul G"), note("D4", 4), words(back), note("E4", 4));
    assertThat(held(passage)).containsExactly("D4 on 4");
    assertThat(end(passage)).isEqualTo(End.WORDS);
  }

  @Test
  void ordinarioEndsThePlaceOfTheBowFirst() {
    Passage passage =
        in(
            words("sul G"),
            note("D4", 2),
            words("sul pont."),
            note("E4", 2),
            words("ord."),
            note("F4", 2),
            words("ord."),
            note("G4", 2));
    assertThat(held(passage)).containsExactly("D4 on 4", "E4 on 4", "F4 on 4");
  }

  @Test
  void ordinarioEndsTheStringIfThePlaceOfTheBowHasEnded() {
    Passage passage =
        in(
            words("col legno"),
            note("A3", 2),
            words("arco"),
            note("B3", 2),
            words("sul G"),
            note("D4", 2),
            words("ord."),
            note("E4", 2));
    assertThat(held(passage)).containsExactly("D4 on 4");
  }

  @Test
  void aQuarterRestEndsThePhraseAndAnEighthDoesNot() {
    Passage passage =
        in(words("sul G"), note("D4", 2), rest(2), note("E4", 2), rest(4), note("F4", 2));
    assertThat(held(passage)).containsExactly("D4 on 4", "E4 on 4");
    assertThat(end(passage)).isEqualTo(End.REST);
  }

  @Test
  void wordsOverARestApplyToThePhraseAfterIt() {
    Passage passage = in(note("A3", 2), words("sul G"), rest(6), note("E4", 2), note("F4", 2));
    assertThat(held(passage)).containsExactly("E4 on 4", "F4 on 4");
  }

  @Test
  void wordsHoldOverAShortRestIfOthersFreeTheStringsLater() {
    Passage passage =
        in(words("sul G"), note("D4", 2), rest(4), note("E4", 2), words("loco"), note("F4", 4));
    assertThat(held(passage)).containsExactly("D4 on 4", "E4 on 4");
    Passage twice =
        in(words("sul G"), note("D4", 2), rest(4), note("E4", 2), words("sul G"), note("F4", 4));
    assertThat(held(twice)).containsExactly("D4 on 4", "F4 on 4");
  }

  @Test
  void restsOfOneVoiceEndNothingWhileAnotherSounds() {
    Passage passage =
        in(
            words("sul G"),
            note("D4", 4),
            rest(8),
            note("F4", 4),
            backup(16),
            note("A3", 16).voice("2"));
    assertThat(held(passage)).containsExactly("A3 on 4", "D4 on 4", "F4 on 4");
  }

  @ParameterizedTest
  @ValueSource(strings = {"dashes", "bracket"})
  void aLineShowsHowLongWordsHoldEvenOverRests(String line) {
    Passage passage =
        in(
            direction(
                "<words>sul G</words></direction-type><direction-type><%s type=\"start\" number=\"1\"%s/>"
                    .formatted(line, line.equals("bracket") ? " line-end=\"none\"" : "")),
            note("D4", 2),
            rest(4),
            note("E4", 2),
            direction(
                "<%s type=\"stop\" number=\"1\"%s/>"
                    .formatted(line, line.equals("bracket") ? " line-end=\"down\"" : "")),
            note("F4", 2));
    assertThat(held(passage)).containsExactly("D4 on 4", "E4 on 4");
    assertThat(end(passage)).isEqualTo(End.LINE);
  }

  private static String dashes(String type, int number) {
    return direction("<dashes type=\"%s\" number=\"%d\"/>".formatted(type, number));
  }

  @Test
  void aLineAloneBelongsToTheWordsAtItsPosition() {
    Passage passage =
        in(
            words("sul G"),
            dashes("start", 1),
            note("D4", 4),
            dashes("stop", 1),
            note("E4", 4),
            note("F4", 4));
    assertThat(held(passage)).containsExactly("D4 on 4");
  }

  @Test
  void aLineOfOtherWordsDoesNotCount() {
    Passage passage =
        in(
            words("sul G"),
            direction(
                "<words>cresc.</words></direction-type><direction-type>"
                    + "<dashes type=\"start\" number=\"1\"/>"),
            note("D4", 4),
            dashes("stop", 1),
            note("E4", 4));
    assertThat(held(passage)).containsExactly("D4 on 4", "E4 on 4");
  }

  @Test
  void aNumeralIsAStringWithALineAndAMovementWithout() {
    String line =
        "<words>IV</words></direction-type><direction-type><dashes type=\"start\" number=\"1\"/>";
    assertThat(held(in(direction(line), note("D4", 4), dashes("stop", 1), note("E4", 4))))
        .containsExactly("D4 on 4");
    assertThat(held(in(words("IV"), note("D4", 4)))).isEmpty();
  }

  @Test
  void wordsForOneVoiceApplyToItAlone() {
    String forSecond =
        "<direction><direction-type><words>sul G</words></direction-type><voice>2</voice></direction>";
    Passage passage = in(note("A4", 16), backup(16), forSecond, note("D4", 16).voice("2"));
    assertThat(held(passage)).containsExactly("D4 on 4");
  }

  // An octave and a fifth above the open string.
  @Test
  void withoutALineWordsEndAtANoteTooHighForTheString() {
    Passage passage =
        in(words("sul G"), note("G4", 4), note("D5", 4), note("E5", 4), note("G4", 4));
    assertThat(held(passage)).containsExactly("G4 on 4", "D5 on 4");
    assertThat(end(passage)).isEqualTo(End.CLIMB);
    assertThat(held(in(words("sul G"), note("E5", 4), note("D5", 4), note("F5", 4))))
        .containsExactly("E5 on 4", "D5 on 4");
  }

  @Test
  void theRemarkShowsWhereWordsHoldAndWhatEndsThem() {
    Passage passage =
        passage(
            violin(
                measure("1", START, words("sul G"), note("D4", 16)),
                measure("2", note("E4", 8), words("III. Saite"), note("F4", 4), rest(4)),
                measure("3", note("G4", 16))));
    assertThat(passage.remarks())
        .contains(
            "plans stay on one string where words ask for it: 'sul G' in m. 1–2 (to the next"
                + " words), 'III. Saite' in m. 2 (to the rest)");
  }

  @Test
  void wordsBeforeTheRequestedMeasuresStillHold() {
    String score =
        violin(
            measure("1", START, words("sul G"), note("D4", 16)),
            measure("2", note("E4", 16)),
            measure("3", words("loco"), note("F4", 16)));
    Passage passage = read(score).passage(PassageRequest.WHOLE.withMeasures("2-3"));
    assertThat(held(passage)).containsExactly("E4 on 4");
    Passage ignored = read(score).passage(PassageRequest.WHOLE.ignoringWords());
    assertThat(ignored.stringWords()).isEmpty();
    assertThat(ignored.remarks().toString()).doesNotContain("string");
  }

  @Test
  void aStringThatTheInstrumentLacksIsIgnoredWithARemark() {
    Passage passage = in(words("sul C"), note("D4", 16));
    assertThat(passage.stringWords()).isEmpty();
    assertThat(passage.remarks())
        .contains("'sul C' in measure 1 does not name a string of the violin and is ignored");
  }
}
