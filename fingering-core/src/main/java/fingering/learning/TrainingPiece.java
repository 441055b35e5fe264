package fingering.learning;

import com.google.common.collect.ImmutableList;
import fingering.scoring.Scoring;

/**
 * A piece in all its fingerings, under one bowing or several.
 *
 * @param lessons the piece under each of its bowings, at least one
 */
record TrainingPiece(ImmutableList<MeasuredPiece> lessons) {
  /** So many moments every piece counts, long or short. */
  private static final double MOMENTS = 100;

  private int players() {
    return lessons.stream().mapToInt(MeasuredPiece::players).sum();
  }

  /** Whether a rule finds anything anywhere in the piece. */
  boolean occurs(int rule) {
    return lessons.stream().anyMatch(lesson -> lesson.occurs(rule));
  }

  /** What a player of one of it counts: pieces count alike, and so do their players. */
  double share(MeasuredPiece lesson) {
    return MOMENTS / lesson.moments() / players();
  }

  /** The agreement of the free plan with the players, each counting alike. */
  Agreement agreement(Scoring scoring) {
    return Agreement.mean(
        lessons.stream()
            .flatMap(lesson -> lesson.agreements(scoring).stream())
            .collect(ImmutableList.toImmutableList()));
  }
}
