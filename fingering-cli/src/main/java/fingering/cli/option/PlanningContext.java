package fingering.cli.option;

import fingering.music.Passage;
import fingering.music.PrintedPart;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import fingering.plan.PlanComparer;

/**
 * What is to be fingered, for whom, and what the rules charge: where all commands begin that plan a
 * score.
 *
 * @param file the file of the score
 * @param score the score
 * @param reading how it is read
 * @param passage what is to be fingered of it
 * @param students for whom
 * @param charging what the rules charge
 */
public record PlanningContext(
    ScoreFile file,
    Score score,
    ScoreOptions reading,
    Passage passage,
    Students students,
    ScoringContext charging) {

  /** Reads it as the options ask. */
  public static PlanningContext read(
      ScoreFile file, ScoreOptions reading, PlayerOptions player, WeightsOptions weights) {
    Students students = player.students();
    ScoringContext charging = weights.charging(students);
    Score score = ScoreReader.read(file);
    return new PlanningContext(
        file, score, reading, reading.read(score, students), students, charging);
  }

  /** What is printed of it. */
  public PrintedPart printed() {
    return reading.printed(score, passage);
  }

  /**
   * What makes plans for it.
   *
   * @param named whether the plans are those of 'compare', which only begin in the positions
   *     allowed; every other plan keeps to them
   */
  public PlanComparer comparer(HandOptions hand, DemandOptions demands, boolean named) {
    return PlanComparer.of(
            passage,
            charging.scoring(),
            students.hand(hand, passage.instrument(), reading.sized()),
            demands.allowed())
        .withDemands(named ? demands.besidesAllowed(passage) : demands.of(passage));
  }
}
