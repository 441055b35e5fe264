package fingering.musicxml;

import static fingering.musicxml.ScoreText.START;
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
import fingering.music.PrintedPosition;
import fingering.music.PrintedString.End;
import fingering.musicxml.reading.PassageRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** How long words for a position hold: common practice, no source. Lines: MusicXML 4.0. */
class PrintedPositionTest {
  /** The written notes with their printed position; {@code ?} if it is unclear. */
  private static List<String> held(Passage passage) {
    List<String> held = new ArrayList<>();
    passage
        .notes()
        .forEach(
            note -> {
              for (PrintedPosition asked : passage.positionWords()) {
                if (asked.notes().contains(note.address())) {
                  held.add(
                      note.written() + " " + asked.position().map(Object::toString).orElse("?"));
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

  @Test
  void wordsHoldUntilOtherWordsMoveTheHand() {
    Passage passage =
        in(
            note("A4", 4),
            words("3rd pos."),
            note("B4", 2),
            note("C5", 2),
            words("I. Lage"),
            note("D4", 4));
    assertThat(held(passage)).containsExactly("B4 3", "C5 3", "D4 1");
    assertThat(passage.positionWords())
        .extracting(PrintedPosition::end)
        .containsExactly(End.WORDS, End.PART);
  }

  @Test
  void wordsHoldOverRestsShorterThanAMeasure() {
    Passage passage = in(words("3rd pos."), note("B4", 4), rest(8), note("C5", 4));
    assertThat(held(passage)).containsExactly("B4 3", "C5 3");
    passage =
        passage(
            violin(
                measure("1", START, words("3rd pos."), note("B4", 16)),
                measure("2", rest(16)),
                measure("3", note("C5", 16))));
    assertThat(held(passage)).containsExactly("B4 3");
    assertThat(passage.positionWords().get(0).end()).isEqualTo(End.REST);
  }

  @Test
  void aLineShowsHowLongWordsHold() {
    Passage passage =
        in(
            direction(
                "<words>3rd pos.</words></direction-type><direction-type><bracket type=\"start\" number=\"1\" line-end=\"none\"/>"),
            note("B4", 2),
            rest(4),
            note("C5", 2),
            direction("<bracket type=\"stop\" number=\"1\" line-end=\"down\"/>"),
            note("D5", 2));
    assertThat(held(passage)).containsExactly("B4 3", "C5 3");
    assertThat(passage.positionWords().get(0).line()).isTrue();
  }

  @Test
  void theThumbEndsThePosition() {
    Passage passage = in(words("3rd pos."), note("B4", 4), words("thumb on D"), note("D5", 4));
    assertThat(held(passage)).containsExactly("B4 3");
  }

  @Test
  void aChoiceOfPositionsEndsThePositionAndIsRemarkedOn() {
    Passage passage = in(words("3rd pos."), note("B4", 4), words("1st or 2nd pos."), note("D5", 4));
    assertThat(held(passage)).containsExactly("B4 3");
    assertThat(passage.remarks())
        .contains(
            "'1st or 2nd pos.' in measure 1 is not read: write the position you want into the part, or ask for it in these measures");
  }

  @Test
  void restezKeepsThePositionAndIsRemarkedOn() {
    Passage passage = in(words("3rd pos."), note("B4", 4), words("restez"), note("C5", 4));
    assertThat(held(passage)).containsExactly("B4 3", "C5 3");
    assertThat(passage.remarks())
        .anyMatch(remark -> remark.startsWith("'restez' in measure 1 is not read"));
  }

  @Test
  void aNumeralNamesAStringWhereOtherWordsNamePositions() {
    Passage passage = in(words("3rd pos."), note("B4", 4), words("II"), note("D5", 4));
    assertThat(held(passage)).containsExactly("B4 3", "D5 3");
    assertThat(held(in(words("3rd pos."), note("B4", 4), words("V"), note("E5", 4))))
        .containsExactly("B4 3", "E5 5");
  }

  @Test
  void aNumeralAloneThatMayBeAStringNamesNoPosition() {
    Passage passage = in(note("B4", 4), words("II"), note("D5", 4));
    assertThat(held(passage)).containsExactly("D5 ?");
  }

  @Test
  void aNumeralThatCannotBeAStringIsAPosition() {
    // D4 is below the first string of a violin, and a violin has no fifth string.
    assertThat(held(in(note("A4", 4), words("I"), note("D4", 4)))).containsExactly("D4 1");
    assertThat(held(in(note("A4", 4), words("V"), note("E5", 4)))).containsExactly("E5 5");
  }

  @Test
  void aNumeralWithALineIsAString() {
    Passage passage =
        in(
            note("A4", 4),
            direction(
                "<words>III</words></direction-type><direction-type><dashes type=\"start\" number=\"1\"/>"),
            note("G4", 4));
    assertThat(held(passage)).isEmpty();
    assertThat(passage.stringWords()).hasSize(1);
  }

  @Test
  void aNumeralOverAMovementIsItsNumber() {
    assertThat(held(in(words("II"), note("E5", 4)))).isEmpty();
    assertThat(
            held(
                passage(
                    violin(
                        measure(
                            "1",
                            START,
                            note("A4", 16),
                            "<barline location=\"right\"><bar-style>light-heavy</bar-style></barline>"),
                        measure("2", words("II"), note("E5", 16))))))
        .isEmpty();
    // Measure numbers that start again, and a numeral that cannot be a string.
    assertThat(
            held(
                passage(
                    violin(
                        measure("1", START, note("A4", 16)),
                        measure("2", note("A4", 16)),
                        measure("1", words("II."), note("A3", 16))))))
        .isEmpty();
    assertThat(held(in(note("A4", 4), words("I."), note("D4", 4)))).containsExactly("D4 ?");
  }

  @Test
  void wordsAreIgnoredOnRequest() {
    Passage passage =
        read(violin(measure("1", START, words("3rd pos."), note("B4", 16))))
            .passage(
                new PassageRequest(
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    false));
    assertThat(passage.positionWords()).isEmpty();
    assertThat(passage.fingered()).isFalse();
  }
}
