package fingering.cli.option;

import com.google.common.collect.ImmutableSet;
import fingering.cli.file.PlanFile;
import fingering.cli.student.ScoringContext;
import fingering.cli.student.Students;
import fingering.lesson.LessonPlanner;
import fingering.music.Passage;
import fingering.music.print.PrintedPart;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import fingering.plan.PlanComparer;
import fingering.plan.Planner;
import java.nio.file.Path;
import java.util.function.Supplier;

/**
 * The input of the commands that plan a score: the passage, the students and the scoring.
 *
 * @param file the file of the score
 * @param score the score
 * @param reading the options by which it was read
 * @param passage the passage to plan, without notes that the instrument does not have
 * @param students the students that the plan is made for
 * @param scoringContext the rules with their weights, and their source
 */
public record PlanningContext(
    ScoreFile file,
    Score score,
    ScoreOptions reading,
    Passage passage,
    Students students,
    ScoringContext scoringContext) {

  /** Reads the passage and the player files that the options name. */
  public static PlanningContext read(ScoreFile file, ScoreOptions reading, PlayerOptions player) {
    return of(file, () -> ScoreReader.read(file), reading, player);
  }

  /** As {@link #read}, from a score that is parsed already. */
  public static PlanningContext of(
      ScoreFile file, Score score, ScoreOptions reading, PlayerOptions player) {
    return of(file, () -> score, reading, player);
  }

  /** The player files are read before the score, so that their errors are reported first. */
  private static PlanningContext of(
      ScoreFile file, Supplier<Score> parsed, ScoreOptions reading, PlayerOptions player) {
    Students students = player.students();
    ScoringContext scoringContext = player.weights.scoring(students);
    Score score = parsed.get();
    Passage passage = reading.read(score, students);
    return new PlanningContext(
        file,
        score,
        reading,
        Planner.playable(passage, player.hand(students, passage.instrument(), reading.build)),
        students,
        scoringContext);
  }

  /** What is printed in the passage. */
  public PrintedPart printed() {
    return reading.printed(score, passage);
  }

  /** The planner of a lesson on the passage. */
  public LessonPlanner lessonPlanner(PlayerOptions player) {
    return new LessonPlanner(
        PlanComparer.of(
            passage,
            scoringContext.scoring(),
            player.hand(students, passage.instrument(), reading.build),
            ImmutableSet.of()),
        PlanFile.demands(passage, Path.of("")));
  }

  /**
   * The planner of the passage.
   *
   * @param named whether it makes the plans of 'compare', which only begin in the allowed
   *     positions; all other plans keep to them
   */
  public PlanComparer comparer(PlayerOptions player, DemandOptions demands, boolean named) {
    return PlanComparer.of(
            passage,
            scoringContext.scoring(),
            player.hand(students, passage.instrument(), reading.build),
            demands.allowedPositions())
        .withDemands(named ? demands.exceptAllowedPositions(passage) : demands.of(passage));
  }
}
