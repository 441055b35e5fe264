package fingering.musicxml;

import static fingering.musicxml.ScoreText.START;
import static fingering.musicxml.ScoreText.backup;
import static fingering.musicxml.ScoreText.measure;
import static fingering.musicxml.ScoreText.note;
import static fingering.musicxml.ScoreText.passage;
import static fingering.musicxml.ScoreText.read;
import static fingering.musicxml.ScoreText.violin;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fingering.music.Note;
import fingering.music.Passage;
import fingering.music.print.PrintedNote;
import fingering.musicxml.ScoreText.N;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Notes that programs hide because they only play back an ornament or a harmonic. */
class UnprintedNotesTest {
  private static final String ONE = "1 note that is not printed is left out";

  private static N hidden(String pitch, int duration) {
    return note(pitch, duration).with("print-object=\"no\"");
  }

  private static List<String> pitches(Passage passage) {
    return passage.notes().stream().map(note -> note.written().toString()).toList();
  }

  /** A turn between two notes: the printed F fills the beat that the hidden voice plays out. */
  private static final String TURN =
      violin(
          measure(
              "1",
              START,
              note("F5", 8),
              note("B5", 8),
              backup(16),
              hidden("F5", 4).voice("2"),
              hidden("G5", 1).voice("2"),
              hidden("F5", 1).voice("2"),
              hidden("E5", 1).voice("2"),
              hidden("F5", 1).voice("2")));

  @Test
  void theHiddenVoiceOfATurnIsNotPlayed() {
    Passage passage = passage(TURN);
    assertThat(pitches(passage)).containsExactly("F5", "B5");
    assertThat(passage.moments().get(0).soundMicros())
        .isEqualTo(passage.moments().get(1).startMicros());
    assertThat(passage.remarks()).contains("5 notes that are not printed are left out");
  }

  @Test
  void theHiddenVoiceCannotBeChosenAndIsNotOnThePage() {
    Score score = read(TURN);
    assertThatThrownBy(() -> score.passage(PassageRequest.WHOLE.withVoice("2")))
        .isInstanceOf(SelectionException.class)
        .hasMessageContaining("has no voice '2'");
    Passage passage = score.passage(PassageRequest.WHOLE);
    assertThat(score.printed(passage, Optional.empty()).measures().get(0).notes())
        .extracting(PrintedNote::voice)
        .containsOnly("1");
  }

  @Test
  void aHiddenNoteLeavesASilenceOfItsLength() {
    Passage passage =
        passage(violin(measure("1", START, note("C5", 4), hidden("D5", 4), note("E5", 8))));
    assertThat(pitches(passage)).containsExactly("C5", "E5");
    assertThat(passage.notes().get(1).start()).isEqualTo(BigFraction.of(2));
    assertThat(passage.moments().get(1).restMicros()).isPositive();
    assertThat(passage.remarks()).contains(ONE);
  }

  @Test
  void aHiddenMemberOfAChordIsLeftOut() {
    Passage passage =
        passage(violin(measure("1", START, note("G4", 16), hidden("E5", 16).chord())));
    assertThat(pitches(passage)).containsExactly("G4");
    assertThat(passage.remarks()).contains(ONE);
  }

  @Test
  void aChordWithAHiddenFirstNoteBeginsWithThePrintedOne() {
    Score score =
        read(
            violin(
                measure(
                    "1",
                    START,
                    hidden("G4", 8),
                    note("E5", 8).chord(),
                    hidden("A4", 0).grace(),
                    note("F5", 0).chord().grace(),
                    note("C5", 8))));
    Passage passage = score.passage(PassageRequest.WHOLE);
    assertThat(pitches(passage)).containsExactly("E5", "F5", "C5");
    assertThat(passage.moments()).hasSize(3);
    assertThat(passage.notes())
        .extracting(Note::address)
        .extracting(a -> a.note())
        .containsExactly(1, 3, 4);
    assertThat(score.printed(passage, Optional.empty()).measures().get(0).notes())
        .extracting(PrintedNote::chord)
        .containsOnly(false);
  }

  @Test
  void hiddenSoundsOfAPrintedHarmonicAreLeftOut() {
    Passage passage =
        passage(
            violin(
                measure(
                    "1",
                    START,
                    note("A4", 16),
                    note("D5", 16).diamond().chord(),
                    backup(16),
                    hidden("A6", 16).voice("2"))));
    assertThat(passage.notes()).hasSize(1);
    assertThat(passage.notes().get(0).marks().harmonic()).isPresent();
  }

  @Test
  void aTieToAHiddenNoteEnds() {
    Passage passage =
        passage(
            violin(measure("1", START, note("C5", 8).tie("start"), hidden("C5", 8).tie("stop"))));
    assertThat(passage.notes().get(0).length()).isEqualTo(BigFraction.of(2));
  }

  @Test
  void aPartOfHiddenNotesHasNoPrintedNotes() {
    Score score = read(violin(measure("1", START, hidden("C5", 16))));
    assertThat(score.hasNotes(score.parts().get(0))).isFalse();
    assertThatThrownBy(() -> score.passage(PassageRequest.WHOLE))
        .isInstanceOf(SelectionException.class)
        .hasMessage("Violin has no printed notes to finger: choose another part.");
  }

  @Test
  void hiddenCueNotesAreNotCounted() {
    Passage passage = passage(violin(measure("1", START, hidden("C5", 8).cue(), note("E5", 8))));
    assertThat(passage.remarks()).noneMatch(remark -> remark.contains("not printed"));
  }
}
