package fingering.musicxml;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import fingering.music.Passage;
import fingering.music.print.Clef;
import fingering.music.print.PrintedMeasure;
import fingering.music.print.PrintedMeasure.Bar;
import fingering.music.print.PrintedMeasure.KeyChange;
import fingering.music.print.PrintedNote;
import fingering.music.print.PrintedNote.Tremolo;
import fingering.music.print.PrintedNote.Tremolo.Role;
import fingering.music.print.PrintedPart;
import fingering.music.print.PrintedPart.Ending;
import fingering.music.print.PrintedText;
import fingering.music.print.PrintedText.Kind;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import fingering.tables.Pitch;
import java.nio.file.Path;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** What is printed on the staff, checked against the demo and against theory books. */
class PrintedPartTest {
  private static final Score DEMO =
      ScoreReader.read(ScoreFile.read(Path.of("..", "docs", "demo", "demo.musicxml")));

  private static PrintedPart printed(String measures) {
    Passage passage = DEMO.passage(PassageRequest.WHOLE.withMeasures(measures));
    return DEMO.printed(passage, Optional.empty());
  }

  // Any book on notation: middle C is on the middle line of the alto clef, on the line above it
  // in the tenor clef, a line below the staff in treble and a line above it in bass.
  @Test
  void middleCIsWhereEachClefPutsIt() {
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
  void everySoundingNoteOfThePassageIsPrintedAtItsPosition() {
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
  void pizzicatoAndDynamicsArePrintedAtTheirPositions() {
    assertThat(
            printed("25-27").texts().stream()
                .filter(text -> text.kind() == Kind.WORDS)
                .map(PrintedText::text))
        .contains("pizz.");
    assertThat(printed("1-32").texts().stream().anyMatch(text -> text.kind() == Kind.DYNAMIC))
        .isTrue();
  }

  private static PrintedPart read(String... measures) {
    StringBuilder part = new StringBuilder();
    for (int i = 0; i < measures.length; i++) {
      part.append("<measure number=\"%d\">%s</measure>".formatted(i + 1, measures[i]));
    }
    Score score =
        ScoreReader.read(
            ScoreFile.of(
                "<score-partwise version=\"4.0\"><part-list><score-part id=\"P1\"><part-name>Viola"
                    + "</part-name></score-part></part-list><part id=\"P1\">"
                    + part
                    + "</part></score-partwise>",
                ImmutableList.of()));
    return score.printed(score.passage(PassageRequest.WHOLE), Optional.empty());
  }

  private static String note(String before, String notations) {
    return "<note>%s<pitch><step>A</step><octave>4</octave></pitch><duration>2</duration>%s</note>"
        .formatted(before, notations.isEmpty() ? "" : "<notations>" + notations + "</notations>");
  }

  private static final String ATTRIBUTES =
      "<attributes><divisions>1</divisions><key><fifths>2</fifths></key><clef><sign>C</sign>"
          + "<line>3</line></clef></attributes>";

  // MusicXML 4.0, elements tremolo and cue.
  @Test
  void tremolosAndCuesAreRead() {
    PrintedPart part =
        read(
            ATTRIBUTES
                + note("", "<ornaments><tremolo type=\"single\">3</tremolo></ornaments>")
                + note("", "<ornaments><tremolo type=\"start\">2</tremolo></ornaments>")
                + note("", "<ornaments><tremolo type=\"stop\">2</tremolo></ornaments>")
                + note("<cue/>", ""));
    assertThat(part.measures().get(0).notes().stream().map(PrintedNote::tremolo))
        .containsExactly(
            new Tremolo(3, Role.ALONE),
            new Tremolo(2, Role.FIRST),
            new Tremolo(2, Role.SECOND),
            Tremolo.NONE);
    assertThat(part.measures().get(0).notes().stream().map(PrintedNote::cue))
        .containsExactly(false, false, false, true);
  }

  // MusicXML 4.0: a key change within a measure is between its notes; element ending.
  @Test
  void changesOfKeyWithinAMeasureAndEndingsAreRead() {
    PrintedPart part =
        read(
            ATTRIBUTES
                + note("", "")
                + "<attributes><key><fifths>-1</fifths></key></attributes>"
                + note("", ""),
            "<barline location=\"left\"><ending number=\"1\" type=\"start\"/></barline>"
                + note("", ""),
            note("", "")
                + "<barline location=\"right\"><ending number=\"1\" type=\"stop\"/></barline>",
            "<barline location=\"left\"><ending number=\"2\" type=\"start\"/></barline>"
                + note("", ""));
    PrintedMeasure first = part.measures().get(0);
    assertThat(first.keys()).containsExactly(new KeyChange(BigFraction.of(2), 2, -1, false));
    assertThat(first.fifthsAt(BigFraction.ONE, 2)).isEqualTo(2);
    assertThat(first.fifthsAt(BigFraction.of(2), 2)).isEqualTo(-1);
    assertThat(part.endings())
        .containsExactly(new Ending(1, 2, "1", true), new Ending(3, 3, "2", false));
  }

  @Test
  void aHairpinWithoutAnEndEndsWithItsMeasure() {
    String wedge =
        "<direction><direction-type><wedge type=\"crescendo\"/></direction-type></direction>";
    PrintedPart part = read(ATTRIBUTES + note("", "") + wedge + note("", ""), note("", ""));
    assertThat(part.wedges()).hasSize(1);
    assertThat(part.wedges().get(0).from().measure()).isEqualTo("1");
    assertThat(part.wedges().get(0).end()).isEqualTo(BigFraction.of(4));
  }
}
