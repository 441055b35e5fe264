package fingering.learning;

import com.google.common.collect.ImmutableList;
import fingering.scoring.Scoring;

/**
 * A piece with all its fingerings.
 *
 * @param versions the versions of the piece, for example with different bowings; at least one
 */
record TrainingPiece(ImmutableList<MeasuredVersion> versions) {
  /** The length, in moments, to which every piece is scaled so that all pieces count equally. */
  private static final double MOMENTS = 100;

  private int players() {
    return versions.stream().mapToInt(MeasuredVersion::players).sum();
  }

  /** Whether a rule charges anything in the piece. */
  boolean occurs(int rule) {
    return versions.stream().anyMatch(version -> version.occurs(rule));
  }

  /** The weight of one player of a version: all pieces, and all players of a piece, are equal. */
  double share(MeasuredVersion version) {
    return MOMENTS / version.moments() / players();
  }

  /** The agreement of the cheapest plan with the players, who are weighted equally. */
  Agreement agreement(Scoring scoring) {
    return Agreement.mean(
        versions.stream()
            .flatMap(version -> version.agreements(scoring).stream())
            .collect(ImmutableList.toImmutableList()));
  }
}
