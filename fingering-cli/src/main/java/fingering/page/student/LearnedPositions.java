package fingering.page.student;

import com.google.common.collect.ImmutableSet;
import com.google.common.collect.ImmutableSortedSet;
import fingering.tables.Instrument.HandKind;
import fingering.tables.Position;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The positions that the form of a student shows. */
final class LearnedPositions {
  private static final int HIGHEST = 7;

  /** The positions of the double bass that have names of their own, in halves. */
  private static final ImmutableSet<Integer> BASS =
      ImmutableSet.of(1, 2, 4, 5, 6, 7, 8, 10, 11, 12, 13, 14);

  private final Optional<HandKind> kind;
  private final ImmutableSet<Position> known;

  /**
   * Creates the positions of a student.
   *
   * @param kind the kind of instrument; empty if it is not known
   * @param known the positions in the player file
   */
  LearnedPositions(Optional<HandKind> kind, ImmutableSet<Position> known) {
    this.kind = kind;
    this.known = known;
  }

  /** The positions to tick: the usual ones, and others that the file has. */
  ImmutableSortedSet<Position> shown() {
    Stream<Position> usual =
        kind.equals(Optional.of(HandKind.BASS))
            ? BASS.stream().map(Position::ofHalves)
            : Stream.concat(
                Stream.of(Position.HALF), IntStream.rangeClosed(1, HIGHEST).mapToObj(Position::of));
    Stream<Position> thumb =
        kind.equals(Optional.of(HandKind.VIOLIN)) ? Stream.of() : Stream.of(Position.THUMB);
    ImmutableSet<Position> between = between();
    return Stream.of(usual, thumb, known.stream().filter(position -> !between.contains(position)))
        .flatMap(all -> all)
        .collect(ImmutableSortedSet.toImmutableSortedSet(Position::compareTo));
  }

  /** The positions that are ticked, and those of the file between two of them. */
  ImmutableSet<Position> with(ImmutableSet<Position> ticked) {
    return Stream.concat(
            ticked.stream(),
            between().stream().filter(position -> neighbours(position).allMatch(ticked::contains)))
        .collect(ImmutableSet.toImmutableSet());
  }

  /** Positions of the file that nobody ticks: {@code 1-3} has those between 1st and 3rd too. */
  private ImmutableSet<Position> between() {
    return known.stream()
        .filter(position -> position.halves().orElse(0) % 2 == 1 && position.rank() > 1)
        .filter(position -> !kind.equals(Optional.of(HandKind.BASS)))
        .filter(position -> neighbours(position).allMatch(known::contains))
        .collect(ImmutableSet.toImmutableSet());
  }

  private static Stream<Position> neighbours(Position position) {
    return Stream.of(position.rank() - 1, position.rank() + 1)
        .map(rank -> at(Math.min(rank, Position.THUMB.rank())));
  }

  /** The position with a rank. */
  static Position at(int rank) {
    return rank == Position.THUMB.rank() ? Position.THUMB : Position.ofHalves(rank);
  }
}
