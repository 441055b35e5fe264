package fingering.practice;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.fingerboard.LeftHand;
import fingering.music.BeatUnit;
import fingering.music.Measure;
import fingering.music.Music;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.ScoreReader;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.PlanComparer;
import fingering.plan.PlannedNote;
import fingering.plan.Planner;
import fingering.scoring.rules.StandardRules;
import fingering.tempo.PlayerSpeed;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Practice spots of the demo: common practice, no source. */
class PracticeSpotsTest {
  private static final Path DEMO = Path.of("..", "docs", "demo", "demo.musicxml");

  private static Plan third() {
    Passage passage = ScoreReader.read(ScoreFile.read(DEMO)).passage(PassageRequest.WHOLE);
    return PlanComparer.of(
            passage, StandardRules.commonPractice(), LeftHand.MEDIUM, ImmutableSet.of())
        .partlyUpperPlan()
        .orElseThrow();
  }

  private static ImmutableList<PracticeSpot> spots() {
    return PracticeSpots.of(third(), PlayerSpeed.named("intermediate"));
  }

  private static Passage read(SpotExercise exercise) {
    return ScoreReader.read(ScoreFile.of(exercise.text(), ImmutableList.of()))
        .passage(PassageRequest.WHOLE);
  }

  @Test
  void spotsAreShiftsAndLimitingMeasures() {
    assertThat(spots()).hasSizeBetween(3, 6);
    assertThat(spots().stream().map(PracticeSpot::reason))
        .anyMatch(reason -> reason.contains("shifts from 1st to 3rd"))
        .anyMatch(reason -> reason.contains("shifts from 3rd to 1st"))
        .anyMatch(reason -> reason.contains("in a row"));
  }

  @Test
  void exercisesHaveFullMeasuresAndAFingerOnEveryNote() {
    for (PracticeSpot spot : spots()) {
      Passage passage = read(spot.exercise().orElseThrow());
      assertThat(passage.measures()).extracting(Measure::length).containsOnly(BigFraction.of(4));
      assertThat(passage.notes()).allMatch(note -> note.marks().finger().isPresent());
      assertThat(passage.notes().get(0).marks().string()).isPresent();
      assertThat(passage.instrument().id()).isEqualTo("viola");
    }
  }

  @Test
  void exercisesUseOnlyPlannedNotesOpenStringsAndGuideNotes() {
    Set<String> planned =
        third().notes().stream().map(PracticeSpotsTest::fingered).collect(Collectors.toSet());
    for (PracticeSpot spot : spots()) {
      List<Note> others =
          read(spot.exercise().orElseThrow()).notes().stream()
              .filter(note -> !planned.contains(fingered(note)))
              .filter(note -> !note.marks().finger().orElseThrow().equals("0"))
              .toList();
      boolean shift = spot.reason().contains("shifts");
      assertThat(others).hasSizeLessThanOrEqualTo(shift ? 1 : 0);
    }
  }

  private static String fingered(PlannedNote note) {
    return note.note().written() + " " + note.finger();
  }

  private static String fingered(Note note) {
    return note.written() + " " + note.marks().finger().orElseThrow();
  }

  @Test
  void repeatedFigureHasAStopAfterEachTime() {
    Passage passage =
        Music.on("violin")
            .tempo("quarter=60")
            .notes(
                "A4/0.5 B4/0.5 C#5/0.5 B4/0.5 A4/0.5 B4/0.5 C#5/0.5 B4/0.5 "
                    + "A4/0.5 B4/0.5 C#5/0.5 B4/0.5 E5/0.5");
    Plan plan = Planner.of(passage, StandardRules.commonPractice()).plan(Brief.free("free"));
    RepeatedFigures.Figure figure = RepeatedFigures.most(plan).orElseThrow();
    assertThat(figure).isEqualTo(new RepeatedFigures.Figure(0, 4, 3));
    Passage exercise = read(new ExerciseBuilder(plan).figure(figure.from(), figure.to()));
    assertThat(exercise.measures()).hasSize(2);
    assertThat(exercise.notes().stream().map(note -> note.written().toString()))
        .containsExactly("A4", "B4", "C#5", "B4", "A4", "B4", "C#5", "B4");
  }

  /** A figure that fills its measure is followed by a measure of rest. */
  @Test
  void figureOfEightNotesHasAMeasureOfRestAfterEachTime() {
    String figure = "D4/0.5 G4/0.5 B4/0.5 D5/0.5 G5/0.5 D5/0.5 B4/0.5 G4/0.5 ";
    Passage passage = Music.on("violin").tempo("quarter=60").notes(figure.repeat(3) + "G4/4");
    Plan plan = Planner.of(passage, StandardRules.commonPractice()).plan(Brief.free("free"));
    SpotExercise exercise = new ExerciseBuilder(plan).figure(0, 7);
    assertThat(exercise.measures()).hasSize(4);
    assertThat(exercise.measures().get(1))
        .containsExactly(new SpotExercise.Event(ImmutableList.of(), new BeatUnit("whole", 0)));
    assertThat(read(exercise).notes()).hasSize(16);
  }

  /** A guide finger would slide on a string that has to sound open. */
  @Test
  void shiftUnderAnOpenStringHasNoGuideNote() {
    PracticeSpot up =
        spots().stream()
            .filter(s -> s.reason().contains("from 1st to 3rd"))
            .findFirst()
            .orElseThrow();

    assertThat(up.instructions())
        .anyMatch(text -> text.startsWith("Lift the finger, shift silently under the open string"))
        .noneMatch(text -> text.contains("guide note"));
    assertThat(read(up.exercise().orElseThrow()).notes())
        .extracting(note -> note.written().toString())
        .doesNotContain("A4");
  }

  /** In octaves with an open string (acoustics: partials of the string). */
  @Test
  void ringingNoteConfirmsTheArrival() {
    assertThat(spots().stream().flatMap(spot -> spot.listenFor().stream()))
        .contains("G4 in measure 17, beat 1 should ring with the open G string");
  }
}
