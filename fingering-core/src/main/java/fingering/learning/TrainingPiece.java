package fingering.learning;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.LeftHand;
import fingering.scoring.Scoring;
import java.util.Collection;
import java.util.List;

/**
 * A piece with all its fingerings.
 *
 * @param versions the versions of the piece, for example with different bowings; at least one
 * @param others the same versions at other tempi
 */
record TrainingPiece(
    ImmutableList<MeasuredVersion> versions, ImmutableList<MeasuredVersion> others) {
  /** The length, in moments, to which every piece is scaled so that all pieces count equally. */
  private static final double MOMENTS = 100;

  /**
   * A piece.
   *
   * @param players for each version, the examples of its players
   * @param tempi the tempi at which the piece is learned, as multiples of its own
   */
  static TrainingPiece of(
      Collection<List<TrainingExample>> players,
      Scoring scoring,
      LeftHand hand,
      ImmutableList<Double> tempi) {
    return new TrainingPiece(
        players.stream()
            .map(some -> MeasuredVersion.of(some, scoring, hand))
            .collect(ImmutableList.toImmutableList()),
        tempi.stream()
            .filter(tempo -> tempo != 1)
            .flatMap(
                tempo ->
                    players.stream()
                        .map(some -> some.stream().map(example -> example.atTempo(tempo)).toList())
                        .map(some -> MeasuredVersion.of(some, scoring, hand)))
            .collect(ImmutableList.toImmutableList()));
  }

  /** The versions at all tempi. */
  ImmutableList<MeasuredVersion> all() {
    return ImmutableList.<MeasuredVersion>builder().addAll(versions).addAll(others).build();
  }

  /** Whether a rule charges anything in the piece. */
  boolean occurs(int rule) {
    return all().stream().anyMatch(version -> version.occurs(rule));
  }

  /**
   * The weight of one player of a version: all pieces, all players of a piece, and all tempi are
   * equal.
   */
  double share(MeasuredVersion version) {
    int players = all().stream().mapToInt(MeasuredVersion::players).sum();
    return MOMENTS / version.moments() / players;
  }

  /** The agreement of the cheapest plan at the tempo of the piece with the players. */
  Agreement agreement(Scoring scoring) {
    return Agreement.mean(
        versions.stream()
            .flatMap(version -> version.agreements(scoring).stream())
            .collect(ImmutableList.toImmutableList()));
  }
}
