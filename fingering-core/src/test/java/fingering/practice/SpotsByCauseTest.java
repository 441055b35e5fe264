package fingering.practice;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import fingering.music.Music;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.ScoreReader;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.Planner;
import fingering.scoring.rules.StandardRules;
import fingering.tempo.PlayerSpeed;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Instructions by what limits the tempo: common practice, no source. */
class SpotsByCauseTest {
  private static ImmutableList<PracticeSpot> spots(Music on, String events) {
    Plan plan =
        Planner.of(on.notes(events), StandardRules.commonPractice())
            .plan(Brief.free("free choice"));
    return PracticeSpots.of(plan, PlayerSpeed.named("common-practice"));
  }

  private static List<String> exercise(PracticeSpot spot) {
    Passage passage =
        ScoreReader.read(ScoreFile.of(spot.exercise().orElseThrow().text(), ImmutableList.of()))
            .passage(PassageRequest.WHOLE);
    return passage.notes().stream().map(SpotsByCauseTest::fingered).toList();
  }

  private static String fingered(Note note) {
    return note.written() + "/" + note.marks().finger().orElseThrow();
  }

  private static PracticeSpot only(ImmutableList<PracticeSpot> spots, String instruction) {
    return spots.stream()
        .filter(spot -> spot.instructions().stream().anyMatch(each -> each.contains(instruction)))
        .findFirst()
        .orElseThrow(() -> new AssertionError(spots.toString()));
  }

  @Test
  void trillIsPractisedWithoutTheOrnament() {
    PracticeSpot spot =
        only(
            spots(Music.violin().tempo("quarter=120"), "A4/1 B4/0.25tr A4/0.25 G4/0.5 A4/1"),
            "Leave out the ornament");

    // Twice, in both dotted rhythms, and without the trill.
    assertThat(exercise(spot).stream().map(note -> note.substring(0, 2)))
        .containsExactly("A4", "B4", "A4", "G4", "A4", "A4", "B4", "A4", "G4", "A4");
  }

  @Test
  void chordIsPractisedWithoutTheBowThenHeld() {
    PracticeSpot spot =
        only(
            spots(Music.violin().tempo("quarter=120"), "A4/2 G3+D4+B4/0.25 A3+F#4+D5/0.25 D4/2"),
            "Place the fingers without the bow");

    assertThat(spot.instructions())
        .anyMatch(text -> text.contains("Stop as soon as anything aches"));
  }

  @Test
  void repeatedFigureOutsideHardMeasuresIsASpot() {
    String hard = "D4/0.25 E4/0.25 F#4/0.25 G4/0.25 A4/0.25 B4/0.25 C#5/0.25 D5/0.25 r/2 ";
    String figure = "A4/0.5 B4/0.5 C#5/0.5 B4/0.5 ";
    PracticeSpot spot =
        only(
            spots(
                Music.violin().tempo("quarter=80"),
                hard.repeat(3) + "r/4 " + figure.repeat(4) + "A4/4"),
            "Stop after each one and count aloud");

    assertThat(spot.reason()).isEqualTo("the same figure 4 times in a row");
    assertThat(spot.measures()).isEqualTo("5–6");
    assertThat(exercise(spot)).startsWith("A4/0", "B4/1", "C#5/2", "B4/1");
  }

  @Test
  void easyMusicHasNoRepeatedFigure() {
    assertThat(spots(Music.violin().tempo("quarter=60"), "A4/4 B4/4 C#5/4"))
        .noneMatch(spot -> spot.reason().contains("figure"));
  }
}
