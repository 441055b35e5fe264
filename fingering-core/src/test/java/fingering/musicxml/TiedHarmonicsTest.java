package fingering.musicxml;

import static fingering.musicxml.HarmonicsTest.passageOf;
import static fingering.musicxml.ScoreText.START;
import static fingering.musicxml.ScoreText.measure;
import static fingering.musicxml.ScoreText.note;
import static fingering.musicxml.ScoreText.passage;
import static fingering.musicxml.ScoreText.rest;
import static fingering.musicxml.ScoreText.violin;
import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.Passage;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Ties of harmonics: one holds the sound, whatever is printed at its end. */
class TiedHarmonicsTest {

  /** An artificial harmonic with ties, and what follows it. */
  private static void assertHeld(Object... following) {
    Passage passage =
        passage(
            violin(
                measure(
                    "1",
                    START,
                    rest(8),
                    note("B4", 8).tie("start"),
                    note("E5", 8).chord().diamond().tie("start")),
                measure("2", following)));
    assertThat(passage.notes()).hasSize(1);
    assertThat(passage.notes().get(0).length()).isEqualTo(BigFraction.of(6));
    assertThat(passage.notes().get(0).sounding()).hasToString("B6");
  }

  @Test
  void tiedHarmonicsAreOneNoteEvenIfOnlyTheFirstIsPrintedInFull() {
    assertHeld(
        note("B4", 8).tie("stop").tie("start"),
        note("E5", 8).chord().diamond().tie("stop"),
        note("B4", 8).tie("stop"));
  }

  // A tie holds the harmonic, whatever the notehead at its end: common practice, no source
  @Test
  void tiedHarmonicGoesOnWithoutItsDiamond() {
    assertHeld(
        note("B4", 8).tie("stop").tie("start"),
        note("E5", 8).chord().tie("stop").tie("start"),
        note("B4", 8).tie("stop"),
        note("E5", 8).chord().tie("stop"));
  }

  @Test
  void notesAfterAHarmonicThatAreNotTiedToItAreNew() {
    Passage passage =
        passageOf(
            note("B4", 8).tie("start"),
            note("E5", 8).chord().diamond(),
            note("B4", 8).tie("stop"),
            note("E5", 8).chord());
    assertThat(passage.notes().stream().map(note -> note.sounding().toString()))
        .containsExactly("B6", "E5");
  }
}
