package fingering.plan;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.search.Penalty;
import java.util.BitSet;

/**
 * A penalty of 1 for each stopped note outside the positions that a brief prefers. Notes that are
 * out of reach there are exempt, and so are notes close to them, because a player who has to move
 * up stays there for the whole figure.
 */
final class OutsidePositions implements Penalty {
  /** The longest time, in microseconds, that the hand may stay up around a note out of reach. */
  private static final long NEARBY = 1_000_000;

  /** The shortest rest, in microseconds, after which the hand has to come back. */
  private static final long RETURNING_REST = 500_000;

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

  @Override
  public long of(int moment, Grip grip) {
    return exempt.get(moment) ? 0 : outside(brief, grip);
  }

  private static long outside(Brief brief, Grip grip) {
    long outside = 0;
    for (Placement placement : grip.placements()) {
      outside += !placement.open() && !brief.prefers(placement.frame().position()) ? 1 : 0;
    }
    return outside;
  }

  /** The moments that are out of reach in the preferred positions, and those close to them. */
  private static BitSet exempt(
      Brief brief, ImmutableList<Moment> moments, GripSelection selection) {
    BitSet exempt = new BitSet();
    for (int m = 0; m < moments.size(); m++) {
      if (selection.allowed(m).allMatch(grip -> outside(brief, grip) > 0)) {
        exempt.set(m);
        for (int next = m + 1; next < moments.size() && close(moments, m, next, next); next++) {
          exempt.set(next);
        }
        for (int before = m - 1; before >= 0 && close(moments, before, m, before + 1); before--) {
          exempt.set(before);
        }
      }
    }
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
