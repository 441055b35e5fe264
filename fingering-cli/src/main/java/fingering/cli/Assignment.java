package fingering.cli;

import fingering.music.Passage;
import fingering.music.PrintedPart;
import fingering.musicxml.Score;
import fingering.musicxml.ScoreFile;
import fingering.musicxml.ScoreReader;
import fingering.plan.Comparer;

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
record Assignment(
    ScoreFile file,
    Score score,
    ScoreOptions reading,
    Passage passage,
    Students students,
    Charging charging) {

  /** Reads it as the options ask. */
  static Assignment read(
      ScoreFile file, ScoreOptions reading, PlayerOptions player, WeightsOptions weights) {
    Students students = player.students();
    Charging charging = weights.charging(students);
    Score score = ScoreReader.read(file);
    return new Assignment(file, score, reading, reading.read(score, students), students, charging);
  }

  /** What is printed of it. */
  PrintedPart printed() {
    return reading.printed(score, passage);
  }

  /**
   * What makes plans for it.
   *
   * @param named whether the plans are those of 'compare', which only begin in the positions
   *     allowed; every other plan keeps to them
   */
  Comparer comparer(HandOptions hand, DemandOptions demands, boolean named) {
    return Comparer.of(
            passage,
            charging.scoring(),
            students.hand(hand, passage.instrument(), reading.sized()),
            demands.allowed())
        .demanding(named ? demands.besidesAllowed(passage) : demands.of(passage));
  }
}
