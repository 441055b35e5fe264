package fingering.plan;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import java.util.BitSet;
import java.util.stream.Stream;

/**
 * The moments within reach at which a hand that is mainly in one position may still be elsewhere.
 *
 * <p>A teacher would say: come back to third after a note that you cannot reach there, but not for
 * a note or two, and not in the middle of a quick figure. Coming back is worth the shift for three
 * notes that take a second; for less, wait for the next rest. Where the music is quick you may
 * leave a note early and come back a note late. Nor does the hand have to stay for a note that a
 * finger reaches only in the place of its neighbour; it may, and then it need not shift (common
 * practice, no source; the numbers are ours).
 *
 * @param brief the brief, which names the positions
 * @param moments the moments of the passage
 * @param selection the grips that the brief allows
 * @param outOfReach the moments that cannot be played in the positions
 */
record ShortReturns(
    Brief brief, ImmutableList<Moment> moments, GripSelection selection, BitSet outOfReach) {
  /** The fewest stopped notes that are worth a shift. */
  private static final long FEWEST_NOTES = 3;

  /** The shortest time, in microseconds, that is worth a shift. */
  private static final long SHORTEST_STAY = 1_000_000;

  /** The longest time, in microseconds, by which the hand may leave early or come back late. */
  private static final long LEEWAY = 300_000;

  /** The moments at which the hand may be elsewhere. */
  BitSet elsewhere() {
    BitSet elsewhere = new BitSet();
    for (int from = 0; from < moments.size(); from++) {
      if (!outOfReach.get(from)) {
        int to = from + 1;
        while (to < moments.size() && !outOfReach.get(to) && !restBefore(to)) {
          to++;
        }
        add(from, to, elsewhere);
        from = to - 1;
      }
    }
    for (int m = 0; m < moments.size(); m++) {
      if (comfortable(m).findAny().isEmpty()) {
        elsewhere.set(m);
      }
    }
    return elsewhere;
  }

  /** The grips of a moment in the positions, with each finger on a letter of its own. */
  private Stream<Grip> comfortable(int m) {
    return selection
        .allowed(m)
        .filter(grip -> OutsidePositions.outside(brief, grip) == 0)
        .filter(grip -> grip.placements().stream().noneMatch(Placement::respelled));
  }

  /** Adds the moments of one stretch without a long rest or a note out of reach. */
  private void add(int from, int to, BitSet elsewhere) {
    boolean comesBack = from > 0 && outOfReach.get(from - 1) && !restBefore(from);
    boolean leaves = to < moments.size() && outOfReach.get(to) && !restBefore(to);
    if ((comesBack || leaves) && !worthTheShift(from, to)) {
      elsewhere.set(from, to);
      return;
    }
    for (int m = from; m < to; m++) {
      if ((comesBack && start(m) - start(from - 1) <= LEEWAY)
          || (leaves && start(to) - start(m) <= LEEWAY)) {
        elsewhere.set(m);
      }
    }
  }

  private boolean worthTheShift(int from, int to) {
    long notes = 0;
    for (int m = from; m < to; m++) {
      notes += stopped(m);
    }
    return notes >= FEWEST_NOTES
        && start(to - 1) + moments.get(to - 1).soundMicros() - start(from) >= SHORTEST_STAY;
  }

  /** The most notes of a moment that can be stopped in the positions. */
  private long stopped(int m) {
    return comfortable(m).mapToLong(ShortReturns::stopped).max().orElse(0);
  }

  private static long stopped(Grip grip) {
    return grip.placements().stream().filter(Placement::stopped).count();
  }

  private long start(int m) {
    return moments.get(m).startMicros();
  }

  private boolean restBefore(int m) {
    return moments.get(m).restMicros() >= OutsidePositions.RETURNING_REST;
  }
}
