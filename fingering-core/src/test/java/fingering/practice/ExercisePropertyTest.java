package fingering.practice;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.music.Music;
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
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.numbers.fraction.BigFraction;

/** Exercises of any music are scores in 4/4 with full measures. */
class ExercisePropertyTest {
  private static final List<String> SCALE =
      List.of("G3", "A3", "B3", "D4", "E4", "F#4", "G4", "B4", "C5", "D5", "F#5", "A5", "B5");

  @Property(tries = 60)
  void measuresOfExercisesAreFull(
      @ForAll @Size(min = 3, max = 9) List<@IntRange(max = 12) Integer> figure,
      @ForAll @IntRange(min = 1, max = 4) int times) {
    String notes =
        figure.stream().map(step -> SCALE.get(step) + "/0.5").collect(Collectors.joining(" "));
    Passage passage =
        Music.on("violin").tempo("quarter=120").notes((notes + " ").repeat(times) + "G4/4");
    Plan plan = Planner.of(passage, StandardRules.commonPractice()).plan(Brief.free("free"));
    for (PracticeSpot spot : PracticeSpots.of(plan, PlayerSpeed.named("intermediate"))) {
      spot.exercise().ifPresent(exercise -> assertReadsInFullMeasures(exercise.text()));
    }
    ExerciseBuilder exercises = new ExerciseBuilder(plan);
    int last = Math.min(figure.size(), 8) - 1;
    assertReadsInFullMeasures(exercises.dotted(0, last).text());
    assertReadsInFullMeasures(exercises.crossing(0, last).text());
    assertReadsInFullMeasures(exercises.figure(0, last).text());
  }

  private static void assertReadsInFullMeasures(String text) {
    Passage read =
        ScoreReader.read(ScoreFile.of(text, ImmutableList.of())).passage(PassageRequest.WHOLE);
    assertThat(read.measures()).extracting(Measure::length).containsOnly(BigFraction.of(4));
  }
}
