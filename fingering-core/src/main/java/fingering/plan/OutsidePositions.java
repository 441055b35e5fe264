package fingering.plan;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.search.Penalty;
import java.util.BitSet;

/**
 * Counts the stopped notes outside the positions that a brief prefers, but for those that cannot be
 * reached inside and those close by: who has to go up stays there for the gesture.
 */
final class OutsidePositions implements Penalty {
  /** Around a note that cannot be reached the hand may stay up so long, in microseconds. */
  private static final long NEARBY = 1_000_000;

  /** A rest this long lets the hand come back in any case, in microseconds. */
  private static final long BREATH = 500_000;

  private final Brief brief;
  private final BitSet excused;

  private OutsidePositions(Brief brief, BitSet excused) {
    this.brief = brief;
    this.excused = excused;
  }

  /** What to count where a brief leaves these grips; nothing where it prefers no positions. */
  static Penalty counted(Brief brief, ImmutableList<Moment> moments, GripSelection left) {
    return brief.preferred().isEmpty()
        ? Penalty.NONE
        : new OutsidePositions(brief, excused(brief, moments, left));
  }

  @Override
  public long of(int moment, Grip grip) {
    return excused.get(moment) ? 0 : outside(brief, grip);
  }

  private static long outside(Brief brief, Grip grip) {
    long outside = 0;
    for (Placement placement : grip.placements()) {
      outside += !placement.open() && !brief.prefers(placement.frame().position()) ? 1 : 0;
    }
    return outside;
  }

  /** The moments that cannot be reached in the preferred positions, and those close by. */
  private static BitSet excused(Brief brief, ImmutableList<Moment> moments, GripSelection left) {
    BitSet excused = new BitSet();
    for (int m = 0; m < moments.size(); m++) {
      if (left.left(m).allMatch(grip -> outside(brief, grip) > 0)) {
        excused.set(m);
        for (int next = m + 1; next < moments.size() && joined(moments, m, next, next); next++) {
          excused.set(next);
        }
        for (int before = m - 1; before >= 0 && joined(moments, before, m, before + 1); before--) {
          excused.set(before);
        }
      }
    }
    return excused;
  }

  /** Whether two moments belong to one gesture, as far as time and the rest before a third tell. */
  private static boolean joined(ImmutableList<Moment> moments, int from, int to, int restBefore) {
    return moments.get(to).startMicros() - moments.get(from).startMicros() <= NEARBY
        && moments.get(restBefore).restMicros() < BREATH;
  }
}
