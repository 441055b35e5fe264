package fingering.musicxml;

import static fingering.musicxml.ScoreText.START;
import static fingering.musicxml.ScoreText.direction;
import static fingering.musicxml.ScoreText.measure;
import static fingering.musicxml.ScoreText.metronome;
import static fingering.musicxml.ScoreText.note;
import static fingering.musicxml.ScoreText.part;
import static fingering.musicxml.ScoreText.passage;
import static fingering.musicxml.ScoreText.read;
import static fingering.musicxml.ScoreText.score;
import static fingering.musicxml.ScoreText.violin;
import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.Moment;
import fingering.music.Passage;
import fingering.music.Tempo;
import fingering.music.TempoChange;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class TempoReadingTest {

  private static List<Long> starts(Passage passage) {
    return passage.moments().stream().map(Moment::startMicros).toList();
  }

  private static final String TWO_TEMPI =
      violin(
          measure("1", START, "<sound tempo=\"60\"/>", note("C5", 8), note("D5", 8)),
          measure("2", "<sound tempo=\"120\"/>", note("C5", 8), note("D5", 8)));

  @Test
  void halfAt72IsQuarterAt144() {
    Passage passage =
        passage(violin(measure("1", START, metronome("half", "72"), note("C5", 8), note("D5", 8))));
    assertThat(passage.tempo()).isEqualTo(Tempo.parse("half=72"));
    assertThat(starts(passage)).containsExactly(0L, 833_333L);
    assertThat(passage.remarks()).isEmpty();
  }

  @Test
  void dotsOfTheBeatUnitCount() {
    String mark =
        direction(
            "<metronome><beat-unit>quarter</beat-unit><beat-unit-dot/>"
                + "<per-minute>40 (circa)</per-minute></metronome>");
    Passage passage = passage(violin(measure("1", START, mark, note("C5", 8), note("D5", 8))));
    assertThat(passage.tempo()).hasToString("dotted-quarter=40");
    assertThat(starts(passage)).containsExactly(0L, 2_000_000L);
  }

  @Test
  void playbackDataOverrideThePrintedMark() {
    Passage passage =
        passage(
            violin(
                measure(
                    "1",
                    START,
                    metronome("quarter", "60"),
                    "<sound tempo=\"120\"/>",
                    note("C5", 8),
                    note("D5", 8))));
    assertThat(starts(passage)).containsExactly(0L, 1_000_000L);
  }

  @Test
  void playbackDataThatAgreeKeepThePrintedMark() {
    Passage passage =
        passage(
            violin(
                measure(
                    "1",
                    START,
                    metronome("half", "72"),
                    "<sound tempo=\"144\"/>",
                    note("C5", 16))));
    assertThat(passage.tempo()).hasToString("half=72");
  }

  @Test
  void marksWithoutANumberAreIgnored() {
    Passage passage =
        passage(violin(measure("1", START, metronome("quarter", "Allegro"), note("C5", 16))));
    assertThat(passage.tempo()).isEqualTo(Tempo.DEFAULT);
    assertThat(passage.remarks()).containsExactly("no tempo in the score; quarter=96 assumed");
  }

  @Test
  void theRequestedTempoScalesLaterTempi() {
    Score score = read(TWO_TEMPI);
    assertThat(starts(score.passage(PassageRequest.WHOLE)))
        .containsExactly(0L, 2_000_000L, 4_000_000L, 5_000_000L);
    Passage slow = score.passage(PassageRequest.WHOLE.withTempo(Tempo.parse("30")));
    assertThat(slow.tempo()).hasToString("quarter=30");
    assertThat(starts(slow)).containsExactly(0L, 4_000_000L, 8_000_000L, 10_000_000L);
  }

  @Test
  void everyTempoIsKeptAndScaledLikeTheFirst() {
    Score score = read(TWO_TEMPI);
    Passage printed = score.passage(PassageRequest.WHOLE);
    assertThat(printed.tempi())
        .containsExactly(
            new TempoChange(BigFraction.ZERO, Tempo.parse("quarter=60")),
            new TempoChange(BigFraction.of(4), Tempo.parse("quarter=120")));
    assertThat(printed.tempoAt(BigFraction.of(7, 2))).isEqualTo(Tempo.parse("quarter=60"));
    assertThat(printed.tempoAt(BigFraction.of(4))).isEqualTo(Tempo.parse("quarter=120"));
    Passage slow = score.passage(PassageRequest.WHOLE.withTempo(Tempo.parse("half=20")));
    assertThat(slow.tempoAt(BigFraction.ZERO)).isEqualTo(Tempo.parse("half=20"));
    assertThat(slow.tempoAt(BigFraction.of(5))).hasToString("quarter=80");
    Passage wild = score.passage(PassageRequest.WHOLE.withTempo(Tempo.parse("quarter=1000")));
    assertThat(wild.tempoAt(BigFraction.of(5))).hasToString("quarter=1000");
  }

  @Test
  void aLaterPassageBeginsAtTheTempoInEffectThere() {
    Passage passage = read(TWO_TEMPI).passage(PassageRequest.WHOLE.withMeasures("2"));
    assertThat(passage.tempo()).hasToString("quarter=120");
    assertThat(starts(passage)).containsExactly(0L, 1_000_000L);
  }

  @Test
  void theTempoMayBeInAnotherPart() {
    Score score =
        read(
            score(
                part("Violin", "", measure("1", START, metronome("quarter", "60"), note("C5", 16))),
                part("Viola", "", measure("1", START, note("C4", 8), note("D4", 8)))));
    assertThat(starts(score.passage(PassageRequest.WHOLE.withPart("viola"))))
        .containsExactly(0L, 2_000_000L);
  }

  @Test
  void aMarkAfterThePickupIsTheTempoOfThePickup() {
    Passage passage =
        passage(
            violin(
                measure("0", START, note("C5", 4)),
                measure("1", metronome("quarter", "60"), note("C5", 16))));
    assertThat(passage.tempo()).hasToString("quarter=60");
    assertThat(starts(passage)).containsExactly(0L, 1_000_000L);
  }
}
