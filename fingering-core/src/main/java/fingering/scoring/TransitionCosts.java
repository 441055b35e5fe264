package fingering.scoring;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;

/**
 * Costs of all pairs of grips of two moments in one transition, apart from time. Only the rules
 * that apply to the transition are evaluated, and each only once for all pairs of grips that are
 * equal in the {@link GripAspect} that it looks at. Not safe for use by many threads.
 */
public final class TransitionCosts {
  private final Transition transition;
  private final Grip[] before;
  private final Grip[] now;
  private final GripGroups groupsBefore;
  private final GripGroups groupsNow;

  /**
   * What the shift depends on: where a note is only respelled, the same finger does not shift, so
   * the place of the hand is not enough.
   */
  private final GripAspect moving;

  /** Indexed by pair of groups of the aspect {@link #moving}: whether the hand shifts. */
  private final boolean[] shifts;

  /** Indexed the same way: points by the rules that look only at the hand. */
  private final long[] hand;

  /** Points by the rules that look at strings or fingers. */
  private final Grouped fingers;

  private final ApplyingRules whole;
  private final ImmutableList<MovementTimes> times;

  TransitionCosts(
      Transition transition,
      WeightedRules rules,
      GripGroups before,
      GripGroups now,
      SharedCosts.Hand known) {
    this.transition = transition;
    this.before = before.grips();
    this.now = now.grips();
    groupsBefore = before;
    groupsNow = now;
    moving = transition.respelled() ? GripAspect.WHOLE : GripAspect.HAND;
    shifts = shifts();
    hand =
        moving == GripAspect.HAND
            ? known.points().between(before, now, shifts)
            : measured(rules.applying(transition, GripAspect.HAND)::cost);
    ApplyingRules onStrings = rules.applying(transition, GripAspect.STRINGS);
    ApplyingRules onFingers = rules.applying(transition, GripAspect.FINGERS);
    Grouped strings =
        new Grouped(
            GripAspect.STRINGS,
            onStrings.conditional(),
            (i, j, shift) -> onStrings.cost(this.before[i], this.now[j], shift));
    fingers =
        new Grouped(
            GripAspect.FINGERS,
            onStrings.conditional() || onFingers.conditional(),
            (i, j, shift) ->
                onFingers.cost(this.before[i], this.now[j], shift)
                    + strings.cost(strings.row(i), i, j, shift));
    whole = rules.applying(transition, GripAspect.WHOLE);
    ImmutableList.Builder<MovementTimes> all = ImmutableList.builder();
    for (int r = 0; r < rules.timedRules().size(); r++) {
      TimedTransitionRule rule = rules.timedRules().get(r);
      boolean byHand = moving == GripAspect.HAND && rule.aspect() == GripAspect.HAND;
      long[] needed =
          byHand
              ? known.times().get(r).between(before, now, shifts)
              : measured((from, to, shift) -> Scoring.needed(rule, transition, from, to, shift));
      GripAspect aspect = byHand ? GripAspect.HAND : GripAspect.WHOLE;
      long weight = rules.timedWeights().get(r);
      all.add(new MovementTimes(rule, weight, aspect, before, now, needed));
    }
    times = all.build();
  }

  private boolean[] shifts() {
    int[] from = groupsBefore.firsts(moving);
    int[] to = groupsNow.firsts(moving);
    boolean[] all = new boolean[from.length * to.length];
    for (int i = 0; i < from.length; i++) {
      Grip grip = before[from[i]];
      for (int j = 0; j < to.length; j++) {
        all[i * to.length + j] = HandMovement.shifts(transition, grip, now[to[j]]);
      }
    }
    return all;
  }

  /** An amount for each pair of grips. */
  private long[] measured(HandCosts.Measure measure) {
    long[] amounts = new long[before.length * now.length];
    int[] to = groupsNow.groups(moving);
    for (int i = 0; i < before.length; i++) {
      int row = row(i);
      for (int j = 0; j < now.length; j++) {
        amounts[i * now.length + j] = measure.amount(before[i], now[j], shifts[row + to[j]]);
      }
    }
    return amounts;
  }

  /** The first index into {@link #shifts} and {@link #hand} for an earlier grip. */
  private int row(int from) {
    return groupsBefore.groups(moving)[from] * groupsNow.count(moving);
  }

  /**
   * Finds points by the rules that do not depend on time, from an earlier grip to each later one.
   *
   * @param from index of the earlier grip
   * @param costs receives the points
   */
  public void find(int from, long[] costs) {
    boolean ifShifts = whole.any(true);
    boolean ifStays = whole.any(false);
    int row = row(from);
    int fingersRow = fingers.row(from);
    int[] to = groupsNow.groups(moving);
    for (int j = 0; j < costs.length; j++) {
      int pair = row + to[j];
      boolean shift = shifts[pair];
      long cost = hand[pair] + fingers.cost(fingersRow, from, j, shift);
      if (shift ? ifShifts : ifStays) {
        cost += whole.cost(before[from], now[j], shift);
      }
      costs[j] = cost;
    }
  }

  /** What movements take by each of the rules that charge for missing time. */
  public ImmutableList<MovementTimes> times() {
    return times;
  }

  /** Costs that are equal for all pairs of grips from the same groups; computed when needed. */
  private final class Grouped {
    private final Measure measure;
    private final int[] from;
    private final int[] to;
    private final int columns;

    /** Indexed by pair of groups: 1 more than the cost if the hand shifts; 0 if not known. */
    private final long[] shifting;

    /** The same if it stays; the same array if that does not matter. */
    private final long[] staying;

    /** Measures a pair of grips. */
    private interface Measure {
      long cost(int from, int to, boolean shift);
    }

    Grouped(GripAspect aspect, boolean conditional, Measure measure) {
      this.measure = measure;
      from = groupsBefore.groups(aspect);
      to = groupsNow.groups(aspect);
      columns = groupsNow.count(aspect);
      shifting = new long[groupsBefore.count(aspect) * columns];
      staying = conditional ? new long[shifting.length] : shifting;
    }

    int row(int i) {
      return from[i] * columns;
    }

    long cost(int row, int i, int j, boolean shift) {
      long[] known = shift ? shifting : staying;
      int pair = row + to[j];
      if (known[pair] == 0) {
        known[pair] = 1 + measure.cost(i, j, shift);
      }
      return known[pair] - 1;
    }
  }
}
