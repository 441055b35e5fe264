package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import fingering.cli.file.NewFiles;
import fingering.cli.practice.SpotsText;
import fingering.cli.terminal.TextStyle;
import fingering.music.BeatUnit;
import fingering.music.Place;
import fingering.music.Tempo;
import fingering.practice.PracticeSpot;
import fingering.practice.SpotExercise;
import fingering.practice.SpotExercise.Event;
import fingering.practice.SpotExercise.Fingered;
import fingering.tables.Instruments;
import fingering.tables.Pitch;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files of exercises for practice spots. */
final class ExercisesTest {
  private static final BeatUnit WHOLE = new BeatUnit("whole", 0);

  @TempDir Path folder;

  /** No key signature has 99 sharps. */
  @Test
  void anExerciseThatFailsDoesNotCostTheOthers() {
    List<PracticeSpot> spots = List.of(spot(99), spot(0));
    SpotsText.Exercises exercises = new SpotsText.Exercises(folder.resolve("new"), spots);
    try (NewFiles files = new NewFiles()) {
      exercises.write(files);
      files.publish();
    }
    assertThat(folder.resolve("new")).isDirectoryContaining("glob:**/2-measure-1.musicxml");
    assertThat(SpotsText.of(spots, Optional.of(exercises), 80, TextStyle.of(false)))
        .anyMatch(line -> line.contains("Its exercise could not be written."))
        .anyMatch(line -> line.contains("Written to"));
  }

  private static PracticeSpot spot(int fifths) {
    Event note = new Event(ImmutableList.of(new Fingered(Pitch.parse("A4"), "0", 2)), WHOLE);
    SpotExercise exercise =
        new SpotExercise(
            "Held note",
            Instruments.standard().named("violin"),
            fifths,
            Tempo.parse("quarter=60"),
            ImmutableList.of(ImmutableList.of(note)));
    return new PracticeSpot(
        new Place(0, "1", BigFraction.ZERO, BigFraction.ONE),
        "1",
        "a held note",
        ImmutableList.of("Play it."),
        Optional.empty(),
        Optional.of(exercise));
  }
}
