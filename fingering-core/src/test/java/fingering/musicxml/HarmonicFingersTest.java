package fingering.musicxml;

import static fingering.musicxml.HarmonicsTest.described;
import static fingering.musicxml.HarmonicsTest.only;
import static fingering.musicxml.ScoreText.START;
import static fingering.musicxml.ScoreText.measure;
import static fingering.musicxml.ScoreText.note;
import static fingering.musicxml.ScoreText.passage;
import static fingering.musicxml.ScoreText.violin;
import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.Harmonic.Kind;
import fingering.music.Marks;
import fingering.music.Note;
import fingering.musicxml.marking.NoteMarks;
import fingering.musicxml.marking.ScoreMarker;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** The fingers printed at harmonics, and written there; MusicXML 4.0, element technical. */
class HarmonicFingersTest {

  @Test
  void theStoppingFingerAndTheStringAreKept() {
    Marks marks =
        only(
                note("B4", 16).technical("<fingering>1</fingering>"),
                note("E5", 16)
                    .chord()
                    .diamond()
                    .technical("<fingering>4</fingering><string>3</string>"))
            .marks();
    assertThat(marks.finger()).contains("1");
    assertThat(marks.string()).isEqualTo(OptionalInt.of(3));
  }

  @Test
  void theFingerOfANaturalHarmonicIsTheOneThatTouches() {
    Marks marks =
        only(
                note("A4", 16).technical("<fingering>0</fingering>"),
                note("E5", 16).chord().diamond().technical("<fingering>4</fingering>"))
            .marks();
    assertThat(marks.finger()).contains("4");
  }

  @Test
  void aFingerIsWrittenAtTheStoppedNoteOfAnArtificialHarmonic() {
    String xml = violin(measure("1", START, note("E5", 16).diamond(), note("B4", 16).chord()));
    Note note = passage(xml).notes().get(0);
    String marked =
        ScoreMarker.mark(
            xml,
            List.of(
                new NoteMarks(
                    note.address(), Optional.of("1"), OptionalInt.of(2), Optional.empty())));
    Note again = passage(marked).notes().get(0);
    assertThat(again.marks().finger()).contains("1");
    assertThat(marked.indexOf("<fingering>1")).isGreaterThan(marked.indexOf("<step>B"));
    assertThat(described(again)).isEqualTo(described(note));
    assertThat(again.marks().harmonic().orElseThrow().kind()).isEqualTo(Kind.ARTIFICIAL);
  }
}
