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

/** What to do where this or that keeps a plan from going faster; common practice, no source. */
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
    return passage.notes().stream().map(SpotsByCauseTest::taken).toList();
  }

  private static String taken(Note note) {
    return note.written() + "/" + note.marks().finger().orElseThrow();
  }

  private static PracticeSpot only(ImmutableList<PracticeSpot> spots, String todo) {
    return spots.stream()
        .filter(spot -> spot.todo().stream().anyMatch(each -> each.contains(todo)))
        .findFirst()
        .orElseThrow(() -> new AssertionError(spots.toString()));
  }

  @Test
  void aTrillIsLeftOutUntilTheNotesGoInTime() {
    PracticeSpot spot =
        only(
            spots(Music.violin().tempo("quarter=120"), "A4/1 B4/0.25tr A4/0.25 G4/0.5 A4/1"),
            "Leave the ornament out");

    // Twice, in dotted rhythms both ways round, and with no trill.
    assertThat(exercise(spot).stream().map(note -> note.substring(0, 2)))
        .containsExactly("A4", "B4", "A4", "G4", "A4", "A4", "B4", "A4", "G4", "A4");
  }

  @Test
  void aGripIsSetWithoutTheBowAndHeldLong() {
    PracticeSpot spot =
        only(
            spots(Music.violin().tempo("quarter=120"), "A4/2 G3+D4+B4/0.25 A3+F#4+D5/0.25 D4/2"),
            "Set the fingers without the bow");

    assertThat(spot.todo()).anyMatch(todo -> todo.contains("Stop at the first ache"));
  }

  @Test
  void aFigureThatComesAgainAndAgainIsCountedWhereItsMeasureIsNoHardOne() {
    String hard = "D4/0.25 E4/0.25 F#4/0.25 G4/0.25 A4/0.25 B4/0.25 C#5/0.25 D5/0.25 r/2 ";
    String figure = "A4/0.5 B4/0.5 C#5/0.5 B4/0.5 ";
    PracticeSpot spot =
        only(
            spots(
                Music.violin().tempo("quarter=80"),
                hard.repeat(3) + "r/4 " + figure.repeat(4) + "A4/4"),
            "Stop after each time, and count aloud");

    assertThat(spot.why()).isEqualTo("one figure 4 times in a row");
    assertThat(spot.measures()).isEqualTo("5–6");
    assertThat(exercise(spot)).startsWith("A4/0", "B4/1", "C#5/2", "B4/1");
  }

  @Test
  void aMusicWithNothingHardInItHasNoFigureEither() {
    assertThat(spots(Music.violin().tempo("quarter=60"), "A4/4 B4/4 C#5/4"))
        .noneMatch(spot -> spot.why().contains("figure"));
  }
}
