package fingering.musicxml;

import static fingering.musicxml.ScoreText.START;
import static fingering.musicxml.ScoreText.backup;
import static fingering.musicxml.ScoreText.measure;
import static fingering.musicxml.ScoreText.measureWith;
import static fingering.musicxml.ScoreText.note;
import static fingering.musicxml.ScoreText.passage;
import static fingering.musicxml.ScoreText.read;
import static fingering.musicxml.ScoreText.rest;
import static fingering.musicxml.ScoreText.violin;
import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.NoteAddress;
import fingering.music.Passage;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class NotesAndTiesTest {

  private static List<String> pitches(Passage passage) {
    return passage.notes().stream().map(note -> note.sounding().toString()).toList();
  }

  private static List<String> pitches(Iterable<Note> notes) {
    return com.google.common.collect.Streams.stream(notes)
        .map(note -> note.sounding().toString())
        .toList();
  }

  @Test
  void tiedNotesAcrossTheBarLineAreOneNoteAtTheAddressOfTheFirst() {
    Passage passage =
        passage(
            violin(
                measure("1", START, rest(12), note("A4", 4).tie("start")),
                measure(
                    "2",
                    note("A4", 4).tie("stop").tie("start"),
                    note("A4", 2).tie("stop"),
                    note("A4", 10))));
    assertThat(passage.moments()).hasSize(2);
    Note tied = passage.notes().get(0);
    assertThat(tied.length()).isEqualTo(BigFraction.of(5, 2));
    assertThat(tied.address()).isEqualTo(new NoteAddress(0, 0, 1));
    assertThat(passage.notes().get(1).address()).isEqualTo(new NoteAddress(0, 1, 2));
  }

  @Test
  void aTieBetweenEnharmonicNotesJoinsThem() {
    Passage passage =
        passage(
            violin(measure("1", START, note("G#4", 8).tie("start"), note("Ab4", 8).tie("stop"))));
    assertThat(pitches(passage)).containsExactly("G#4");
    assertThat(passage.notes().get(0).length()).isEqualTo(BigFraction.of(4));
  }

  @Test
  void aTieWithOnlyOneEndIsIgnored() {
    Passage passage =
        passage(
            violin(
                measure(
                    "1",
                    START,
                    note("A4", 4).tie("stop"),
                    note("B4", 4).tie("start"),
                    rest(4),
                    note("B4", 4).tie("stop"))));
    assertThat(pitches(passage)).containsExactly("A4", "B4", "B4");
  }

  @Test
  void aTieMayContinueInAnotherVoice() {
    Passage passage =
        passage(
            violin(
                measure(
                    "1",
                    START,
                    note("A4", 8).tie("start"),
                    note("E5", 8),
                    backup(8),
                    note("A4", 8).tie("stop").voice("2"))));
    assertThat(passage.moments()).hasSize(2);
    assertThat(pitches(passage.moments().get(1).starting())).containsExactly("E5");
    assertThat(pitches(passage.moments().get(1).held())).containsExactly("A4");
  }

  @Test
  void aNoteTiedIntoThePassageCountsFromItsFirstMeasure() {
    Score score =
        read(
            violin(
                measure("1", START, note("A4", 16).tie("start")),
                measure("2", note("A4", 8).tie("stop"), note("B4", 8).tie("start")),
                measure("3", note("B4", 16).tie("stop"))));
    Passage passage = score.passage(PassageRequest.WHOLE.withMeasures("2"));
    assertThat(pitches(passage)).containsExactly("A4", "B4");
    assertThat(passage.notes()).allMatch(note -> note.length().equals(BigFraction.of(2)));
  }

  @Test
  void tripletsAreExact() {
    String triplets = START.replace("<divisions>4</divisions>", "<divisions>3</divisions>");
    Passage passage =
        passage(
            violin(
                measure(
                    "1", triplets, note("C4", 1), note("D4", 1), note("E4", 1), note("F4", 9))));
    assertThat(passage.notes().stream().map(Note::start))
        .containsExactly(
            BigFraction.ZERO, BigFraction.of(1, 3), BigFraction.of(2, 3), BigFraction.ONE);
    assertThat(passage.notes().get(1).place()).hasToString("measure 1, beat 1.33");
  }

  @Test
  void divisionsMayChangeInTheMiddleOfAMeasure() {
    Passage passage =
        passage(
            violin(
                measure(
                    "1",
                    START,
                    note("C4", 4),
                    "<attributes><divisions>480</divisions></attributes>",
                    note("D4", 480),
                    note("E4", 960))));
    assertThat(passage.measures().get(0).length()).isEqualTo(BigFraction.of(4));
    assertThat(passage.notes().get(2).start()).isEqualTo(BigFraction.of(2));
  }

  @Test
  void theNotesOfAChordAreOneMomentFromTheLowest() {
    Passage passage =
        passage(
            violin(
                measure(
                    "1",
                    START,
                    note("B4", 8),
                    note("D4", 8).chord(),
                    note("G3", 4).chord(),
                    note("A4", 8))));
    assertThat(passage.moments()).hasSize(2);
    assertThat(pitches(passage.moments().get(0).starting())).containsExactly("G3", "D4", "B4");
    assertThat(passage.moments().get(0).soundMicros()).isEqualTo(1_250_000);
    assertThat(passage.moments().get(1).held()).isEmpty();
  }

  @Test
  void aUnisonInAChordIsTwoNotesButOfTwoVoicesOne() {
    Passage passage =
        passage(
            violin(
                measure(
                    "1",
                    START,
                    note("D4", 8),
                    note("D4", 8).chord(),
                    note("A4", 8),
                    backup(8),
                    note("A4", 4).voice("2"),
                    note("F4", 4).voice("2"))));
    assertThat(pitches(passage)).containsExactly("D4", "D4", "A4", "F4");
    assertThat(passage.notes().get(2).length()).isEqualTo(BigFraction.of(2));
  }

  @Test
  void longNotesAreHeldWhileAnotherVoiceMoves() {
    String xml =
        violin(
            measure(
                "1",
                START,
                note("D4", 16),
                backup(16),
                note("B4", 4).voice("2"),
                rest(4).voice("2"),
                note("C5", 8).voice("2")));
    Passage passage = passage(xml);
    assertThat(passage.moments()).hasSize(2);
    Moment second = passage.moments().get(1);
    assertThat(pitches(second.starting())).containsExactly("C5");
    assertThat(pitches(second.held())).containsExactly("D4");
    assertThat(second.restMicros()).isZero();
    Passage upper = read(xml).passage(PassageRequest.WHOLE.withVoice("2"));
    assertThat(pitches(upper)).containsExactly("B4", "C5");
    assertThat(upper.moments().get(1).held()).isEmpty();
    assertThat(upper.moments().get(1).restMicros()).isEqualTo(625_000);
  }

  @Test
  void graceNotesTakeTheirTimeFromTheMainNote() {
    Passage passage =
        passage(
            violin(
                measure(
                    "1",
                    START,
                    note("C5", 8),
                    note("A4", 0).grace(),
                    note("G4", 0).grace(),
                    note("F4", 8))));
    assertThat(pitches(passage)).containsExactly("C5", "A4", "G4", "F4");
    assertThat(passage.moments().stream().map(Moment::grace))
        .containsExactly(false, true, true, false);
    // At quarter = 96 an eighth of a quarter is 78.125 ms.
    assertThat(passage.moments().stream().map(Moment::startMicros))
        .containsExactly(0L, 1_250_000L, 1_328_125L, 1_406_250L);
    assertThat(passage.moments().get(3).soundMicros()).isEqualTo(1_250_000 - 156_250);
    assertThat(passage.notes().get(1).length()).isEqualTo(BigFraction.ZERO);
    assertThat(passage.notes().get(1).place()).hasToString("measure 1, beat 3");
  }

  @Test
  void graceNotesLeaveHalfOfTheTimeToTheMainNote() {
    Passage passage =
        passage(
            violin(
                measure(
                    "1",
                    START,
                    note("A4", 0).grace(),
                    note("G4", 0).grace(),
                    note("A4", 0).grace(),
                    note("F4", 1),
                    note("E4", 15))));
    // A sixteenth at quarter = 96 lasts 156.25 ms.
    assertThat(passage.moments().get(3).startMicros()).isEqualTo(78_125);
    assertThat(passage.moments().get(3).soundMicros()).isEqualTo(78_125);
    assertThat(passage.moments().get(4).startMicros()).isEqualTo(156_250);
  }

  @Test
  void cueNotesAreNotPlayedButTakeTime() {
    Passage passage = passage(violin(measure("1", START, note("C5", 8).cue(), note("F4", 8))));
    assertThat(pitches(passage)).containsExactly("F4");
    assertThat(passage.notes().get(0).start()).isEqualTo(BigFraction.of(2));
  }

  @Test
  void aPickupIsCountedAsTheLastBeatsOfAMeasure() {
    String waltz = START.replace("<beats>4</beats>", "<beats>3</beats>");
    Passage passage =
        passage(
            violin(
                measureWith("number=\"0\" implicit=\"yes\"", waltz, note("G4", 4)),
                measure("1", note("C5", 12))));
    assertThat(passage.notes().get(0).place()).hasToString("measure 0, beat 3");
    assertThat(passage.notes().get(1).place()).hasToString("measure 1, beat 1");
    assertThat(passage.measures().get(1).start()).isEqualTo(BigFraction.ONE);
  }

  @Test
  void anEmptyMeasureHasTheLengthOfItsMeter() {
    Passage passage = passage(violin(measure("1", START), measure("2", note("C5", 16))));
    assertThat(passage.measures().get(0).length()).isEqualTo(BigFraction.of(4));
    assertThat(passage.moments().get(0).startMicros()).isEqualTo(2_500_000);
    assertThat(passage.moments().get(0).restMicros()).isZero();
  }

  @Test
  void inSixEightEachEighthCountsOne() {
    String sixEight =
        START
            .replace("<beats>4</beats>", "<beats>6</beats>")
            .replace("<beat-type>4</beat-type>", "<beat-type>8</beat-type>");
    Passage passage = passage(violin(measure("1", sixEight, note("C5", 6), note("D5", 6))));
    assertThat(passage.notes().get(1).place()).hasToString("measure 1, beat 4");
  }
}
