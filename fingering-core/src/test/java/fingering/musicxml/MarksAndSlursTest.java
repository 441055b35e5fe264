package fingering.musicxml;

import static fingering.musicxml.ScoreText.START;
import static fingering.musicxml.ScoreText.backup;
import static fingering.musicxml.ScoreText.direction;
import static fingering.musicxml.ScoreText.measure;
import static fingering.musicxml.ScoreText.note;
import static fingering.musicxml.ScoreText.passage;
import static fingering.musicxml.ScoreText.read;
import static fingering.musicxml.ScoreText.violin;
import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.Harmonic;
import fingering.music.Marks;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.tables.Pitch;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class MarksAndSlursTest {

  private static List<Boolean> slurred(Passage passage) {
    return passage.moments().stream().map(Moment::slurred).toList();
  }

  private static Marks marks(String notation) {
    return passage(violin(measure("1", START, note("A4", 16).notation(notation))))
        .notes()
        .get(0)
        .marks();
  }

  @Test
  void aSlurJoinsTheNotesAfterItsStartUpToItsEnd() {
    Passage passage =
        passage(
            violin(
                measure(
                    "1",
                    START,
                    note("C4", 4).slur("start", 1),
                    note("D4", 4),
                    note("E4", 4).slur("start", 1).slur("stop", 1),
                    note("F4", 4).slur("stop", 1)),
                measure("2", note("G4", 16))));
    assertThat(slurred(passage)).containsExactly(false, true, true, true, false);
  }

  @Test
  void slursWithOnlyOneEndJoinNothing() {
    Passage passage =
        passage(
            violin(
                measure(
                    "1",
                    START,
                    note("C4", 4).slur("stop", 1),
                    note("D4", 4).slur("start", 2),
                    note("E4", 4),
                    note("F4", 4))));
    assertThat(slurred(passage)).containsOnly(false);
  }

  @Test
  void twoVoicesMayUseOneSlurNumberAtTheSameTime() {
    Passage passage =
        passage(
            violin(
                measure(
                    "1",
                    START,
                    note("C5", 4).slur("start", 1),
                    note("D5", 4).slur("stop", 1),
                    note("E5", 8),
                    backup(16),
                    note("C4", 12).voice("2").slur("start", 1),
                    note("D4", 4).voice("2").slur("stop", 1))));
    assertThat(slurred(passage)).containsExactly(false, true, true, true);
  }

  @Test
  void aSlurFromOneVoiceToAnotherIsFound() {
    Passage passage =
        passage(
            violin(
                measure("1", START, note("C5", 8).slur("start", 1)),
                measure("2", note("D5", 8).voice("2").slur("stop", 1), note("E5", 8))));
    assertThat(slurred(passage)).containsExactly(false, true, false);
  }

  @Test
  void aGraceNoteSlurredToItsNoteJoinsTheTwo() {
    Passage passage =
        passage(
            violin(
                measure(
                    "1",
                    START,
                    note("C5", 8),
                    note("A4", 0).grace().slur("start", 1),
                    note("G4", 8).slur("stop", 1))));
    assertThat(slurred(passage)).containsExactly(false, false, true);
  }

  @Test
  void theFirstMomentOfAPassageIsNotSlurredToMusicOutsideIt() {
    Score score =
        read(
            violin(
                measure("1", START, note("C5", 16).slur("start", 1)),
                measure("2", note("D5", 8), note("E5", 8).slur("stop", 1))));
    assertThat(slurred(score.passage(PassageRequest.WHOLE.withMeasures("2"))))
        .containsExactly(false, true);
  }

  @Test
  void thePrintedFingerAndStringAreRead() {
    Marks marks = marks("<technical><fingering>3</fingering><string>2</string></technical>");
    assertThat(marks.finger()).isEqualTo(Optional.of("3"));
    assertThat(marks.string()).isEqualTo(OptionalInt.of(2));
  }

  @Test
  void openStringsAndTheThumbAreFingersToo() {
    assertThat(marks("<technical><open-string/></technical>").finger()).contains("0");
    assertThat(marks("<technical><thumb-position/></technical>").finger()).contains("T");
  }

  @Test
  void substitutionsAndAlternativesAreNotTheFinger() {
    Marks marks =
        marks(
            "<technical><fingering alternate=\"yes\">1</fingering>"
                + "<fingering substitution=\"yes\">2</fingering><fingering>4</fingering>"
                + "<fingering>3</fingering></technical>");
    assertThat(marks.finger()).contains("4");
  }

  @Test
  void trillsAccentsAndHarmonicsAreMarked() {
    assertThat(marks("<ornaments><inverted-mordent/></ornaments>").trill())
        .contains(Pitch.parse("B4"));
    assertThat(marks("<ornaments><tremolo>3</tremolo></ornaments>").trill()).isEmpty();
    assertThat(marks("<articulations><strong-accent/></articulations>").accent()).isTrue();
    assertThat(marks("<technical><harmonic><natural/></harmonic></technical>").harmonic())
        .contains(Harmonic.NATURAL);
    assertThat(marks("<articulations><staccato/></articulations>")).isEqualTo(Marks.NONE);
  }

  @Test
  void pizzicatoLastsUntilArco() {
    Passage passage =
        passage(
            violin(
                measure(
                    "1",
                    START,
                    note("C5", 4),
                    direction("<words>Pizz.</words>"),
                    note("D5", 4),
                    note("E5", 4),
                    direction("<words>arco</words>"),
                    note("F5", 4)),
                measure(
                    "2",
                    "<sound pizzicato=\"yes\"/>",
                    note("C5", 8),
                    "<sound pizzicato=\"no\"/>",
                    note("C5", 4),
                    note("C5", 4).with("pizzicato=\"yes\""))));
    assertThat(passage.moments().stream().map(Moment::pizzicato))
        .containsExactly(false, true, true, false, true, false, true);
  }

  @Test
  void slursOfOtherVoicesDoNotCountIfOneVoiceIsRequested() {
    Score score =
        read(
            violin(
                measure(
                    "1",
                    START,
                    note("C5", 8).slur("start", 1),
                    note("D5", 8).slur("stop", 1),
                    backup(16),
                    note("C4", 8).voice("2"),
                    note("D4", 8).voice("2"))));
    assertThat(slurred(score.passage(PassageRequest.WHOLE))).containsExactly(false, true);
    assertThat(slurred(score.passage(PassageRequest.WHOLE.withVoice("2")))).containsOnly(false);
  }
}
