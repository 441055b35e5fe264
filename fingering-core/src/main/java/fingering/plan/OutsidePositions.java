package fingering.plan;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.search.Penalty;
import java.util.BitSet;

/**
 * A penalty of 1 for each stopped note outside the positions that a brief prefers. Notes that are
 * out of reach there are exempt, and so are some notes close to them: because a player who has to
 * move up stays there for the whole figure, or, if the hand returns as soon as it can, those of
 * {@link ShortReturns}.
 */
final class OutsidePositions implements Penalty {
  /** The longest time, in microseconds, that the hand may stay up around a note out of reach. */
  private static final long NEARBY = 1_000_000;

  /** The shortest rest, in microseconds, after which the hand has to come back. */
  static final long RETURNING_REST = 500_000;

  private final Brief brief;

  /** The moments at which nothing is counted. */
  private final BitSet exempt;

  private OutsidePositions(Brief brief, BitSet exempt) {
    this.brief = brief;
    this.exempt = exempt;
  }

  /**
   * The penalty of a brief; none if it prefers no positions.
   *
   * @param selection the grips that the brief allows
   */
  static Penalty of(Brief brief, ImmutableList<Moment> moments, GripSelection selection) {
    return brief.preferred().isEmpty()
        ? Penalty.NONE
        : new OutsidePositions(brief, exempt(brief, moments, selection));
  }

  /** The moments that no allowed grip plays in the preferred positions. */
  static BitSet outOfReach(Brief brief, ImmutableList<Moment> moments, GripSelection selection) {
    BitSet outOfReach = new BitSet();
    for (int m = 0; m < moments.size(); m++) {
      outOfReach.set(m, selection.allowed(m).allMatch(grip -> outside(brief, grip) > 0));
    }
    return outOfReach;
  }

  @Override
  public long of(int moment, Grip grip) {
    return exempt.get(moment) ? 0 : outside(brief, grip);
  }

  static long outside(Brief brief, Grip grip) {
    long outside = 0;
    for (Placement placement : grip.placements()) {
      outside += !placement.open() && !brief.prefers(placement.frame().position()) ? 1 : 0;
    }
    return outside;
  }

  /** The moments that are out of reach in the preferred positions, and those close to them. */
  private static BitSet exempt(
      Brief brief, ImmutableList<Moment> moments, GripSelection selection) {
    BitSet outOfReach = outOfReach(brief, moments, selection);
    BitSet exempt = (BitSet) outOfReach.clone();
    if (brief.returning()) {
      exempt.or(new ShortReturns(brief, moments, selection, outOfReach).elsewhere());
      return exempt;
    }
    outOfReach.stream()
        .forEach(
            m -> {
              int next = m + 1;
              while (next < moments.size() && close(moments, m, next, next)) {
                exempt.set(next++);
              }
              int before = m - 1;
              while (before >= 0 && close(moments, before, m, before + 1)) {
                exempt.set(before--);
              }
            });
    return exempt;
  }

  /**
   * Whether two moments are close in time, with no long rest before a third.
   *
   * @param restBefore index of the third moment
   */
  private static boolean close(ImmutableList<Moment> moments, int from, int to, int restBefore) {
    return moments.get(to).startMicros() - moments.get(from).startMicros() <= NEARBY
        && moments.get(restBefore).restMicros() < RETURNING_REST;
  }
}
