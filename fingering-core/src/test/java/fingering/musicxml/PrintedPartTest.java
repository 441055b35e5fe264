package fingering.musicxml;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.Clef;
import fingering.music.Passage;
import fingering.music.PrintedMeasure;
import fingering.music.PrintedMeasure.Bar;
import fingering.music.PrintedNote;
import fingering.music.PrintedPart;
import fingering.music.PrintedText;
import fingering.music.PrintedText.Kind;
import fingering.tables.Pitch;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is printed on the staff, checked against the demo as it is set and against theory books. */
class PrintedPartTest {
  private static final Score DEMO =
      ScoreReader.read(ScoreFile.read(Path.of("..", "docs", "demo", "demo.musicxml")));

  private static PrintedPart printed(String measures) {
    Passage passage = DEMO.passage(PassageRequest.WHOLE.withMeasures(measures));
    return DEMO.printed(passage, Optional.empty());
  }

  // Any book on notation: middle C lies on the middle line of the alto clef, on the line above it
  // in the tenor clef, a line below the staff in treble and a line above it in bass.
  @Test
  void middleCStandsWhereEachClefPutsIt() {
    Pitch middleC = Pitch.parse("C4");
    assertThat(Clef.ALTO.step(middleC)).isEqualTo(4);
    assertThat(Clef.TENOR.step(middleC)).isEqualTo(6);
    assertThat(Clef.TREBLE.step(middleC)).isEqualTo(-2);
    assertThat(Clef.BASS.step(middleC)).isEqualTo(10);
    assertThat(new Clef(Clef.Sign.G, 2, -1).step(middleC)).isEqualTo(5);
  }

  @Test
  void theDemoIsPrintedInTheAltoClefAndEndsWithAFinalBar() {
    PrintedPart part = printed("30-32");
    assertThat(part.measures()).hasSize(3);
    assertThat(part.measures()).allMatch(measure -> measure.clef().equals(Clef.ALTO));
    assertThat(part.measures().get(2).end()).isEqualTo(Bar.FINAL);
    assertThat(part.measures().get(0).end()).isEqualTo(Bar.SINGLE);
  }

  @Test
  void everySoundingNoteOfThePassageIsPrintedWhereItStands() {
    Passage passage = DEMO.passage(PassageRequest.WHOLE);
    PrintedPart part = DEMO.printed(passage, Optional.empty());
    assertThat(
            part.measures().stream()
                .flatMap(measure -> measure.notes().stream())
                .map(PrintedNote::address))
        .containsAll(passage.notes().stream().map(note -> note.address()).toList());
  }

  @Test
  void restsFillTheMeasureWithTheNotes() {
    for (PrintedMeasure measure : printed("16-28").measures()) {
      double quarters =
          measure.notes().stream()
              .filter(note -> !note.chord())
              .mapToDouble(note -> note.length().doubleValue())
              .sum();
      assertThat(quarters).as("measure index %d", measure.index()).isEqualTo(3);
    }
  }

  @Test
  void pizzicatoAndDynamicsArePrintedWhereThePartHasThem() {
    assertThat(
            printed("25-27").texts().stream()
                .filter(text -> text.kind() == Kind.WORDS)
                .map(PrintedText::text))
        .contains("pizz.");
    assertThat(printed("1-32").texts().stream().anyMatch(text -> text.kind() == Kind.DYNAMIC))
        .isTrue();
  }
}
