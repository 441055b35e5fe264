package fingering.scoring;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import java.util.Arrays;

/**
 * Costs of all pairs of grips of two moments in one transition, apart from time. Only the rules
 * that apply to the transition are evaluated, and each only once for all pairs of grips that are
 * equal in the {@link GripAspect} that it looks at. Not safe for use by many threads.
 */
public final class TransitionCosts {
  private final Transition transition;
  private final GripGroups before;
  private final GripGroups now;

  /**
   * What says whether the hand shifts. Where a note is only spelled anew, the same finger does not
   * shift, so the whole grip matters.
   */
  private final GripAspect moved;

  /** Indexed by pair of groups: whether the hand shifts. */
  private final boolean[] shifts;

  /** Indexed by pair of groups: points by the rules that look only at the hand. */
  private final long[] hand;

  private final Grouped strings;
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
    this.before = before;
    this.now = now;
    moved = transition.respelled() ? GripAspect.WHOLE : GripAspect.HAND;
    shifts = shifts();
    strings = new Grouped(GripAspect.STRINGS, rules);
    fingers = new Grouped(GripAspect.FINGERS, rules);
    whole =
        rules.applying(
            transition, aspect -> aspect == GripAspect.WHOLE || aspect == GripAspect.HAND && !onlyHand());
    hand =
        onlyHand() ? known.points().between(before, now, shifts) : new long[shifts.length];
    ImmutableList.Builder<MovementTimes> all = ImmutableList.builder();
    for (int r = 0; r < rules.timedRules().size(); r++) {
      TimedTransitionRule rule = rules.timedRules().get(r);
      boolean byHand = onlyHand() && rule.aspect() == GripAspect.HAND;
      all.add(
          new MovementTimes(
              rule,
              rules.timedWeights().get(r),
              byHand ? GripAspect.HAND : GripAspect.WHOLE,
              before,
              now,
              byHand ? known.times().get(r).between(before, now, shifts) : needed(rule)));
    }
    times = all.build();
  }

  private boolean onlyHand() {
    return moved == GripAspect.HAND;
  }

  private boolean[] shifts() {
    int[] from = before.firsts(moved);
    int[] to = now.firsts(moved);
    boolean[] all = new boolean[from.length * to.length];
    for (int i = 0; i < from.length; i++) {
      Grip grip = before.grips().get(from[i]);
      for (int j = 0; j < to.length; j++) {
        all[i * to.length + j] = HandMovement.shifts(transition, grip, now.grips().get(to[j]));
      }
    }
    return all;
  }

  /** The time that a rule needs, for each pair of grips. */
  private long[] needed(TimedTransitionRule rule) {
    int columns = now.grips().size();
    long[] needed = new long[before.grips().size() * columns];
    boolean[] moves = new boolean[columns];
    for (int i = 0; i < before.grips().size(); i++) {
      findShifts(i, moves);
      for (int j = 0; j < columns; j++) {
        if (rule.condition().met(moves[j])) {
          needed[i * columns + j] =
              Scoring.needed(rule, transition, before.grips().get(i), now.grips().get(j));
        }
      }
    }
    return needed;
  }

  private void findShifts(int from, boolean[] moves) {
    int first = before.groups(moved)[from] * now.count(moved);
    int[] to = now.groups(moved);
    for (int j = 0; j < moves.length; j++) {
      moves[j] = shifts[first + to[j]];
    }
  }

  /**
   * Points by the rules that do not depend on time, from an earlier grip to each later one.
   *
   * @param from index of the earlier grip
   */
  public long[] from(int from) {
    long[] costs = new long[now.grips().size()];
    boolean[] moves = new boolean[costs.length];
    findShifts(from, moves);
    int first = before.groups(moved)[from] * now.count(moved);
    int[] to = now.groups(moved);
    for (int j = 0; j < costs.length; j++) {
      costs[j] = hand[first + to[j]];
    }
    strings.add(from, moves, costs);
    fingers.add(from, moves, costs);
    addWhole(from, moves, costs);
    return costs;
  }

  private void addWhole(int from, boolean[] moves, long[] costs) {
    Grip grip = before.grips().get(from);
    boolean anyShifting = whole.any(true);
    boolean anyStaying = whole.any(false);
    for (int j = 0; j < costs.length; j++) {
      if (moves[j] ? anyShifting : anyStaying) {
        costs[j] += whole.cost(grip, now.grips().get(j), moves[j]);
      }
    }
  }

  /** What movements take by each of the rules that charge for missing time. */
  public ImmutableList<MovementTimes> times() {
    return times;
  }

  /** The costs by the rules that look at one aspect of grips. */
  private final class Grouped {
    private static final long UNKNOWN = -1;

    private final ApplyingRules rules;
    private final int[] groupsFrom;
    private final int[] groupsTo;
    private final int columns;

    /** Indexed by pair of groups: the costs if the hand shifts. */
    private final long[] shifting;

    /** The same array if it does not matter whether the hand shifts. */
    private final long[] staying;

    Grouped(GripAspect aspect, WeightedRules all) {
      rules = all.applying(transition, aspect::equals);
      groupsFrom = before.groups(aspect);
      groupsTo = now.groups(aspect);
      columns = now.count(aspect);
      shifting = unknown(before.count(aspect) * columns);
      staying = rules.conditional() ? unknown(shifting.length) : shifting;
    }

    private static long[] unknown(int size) {
      long[] costs = new long[size];
      Arrays.fill(costs, UNKNOWN);
      return costs;
    }

    void add(int from, boolean[] moves, long[] costs) {
      if (!rules.any(true) && !rules.any(false)) {
        return;
      }
      int first = groupsFrom[from] * columns;
      for (int j = 0; j < costs.length; j++) {
        long[] known = moves[j] ? shifting : staying;
        int pair = first + groupsTo[j];
        long cost = known[pair];
        if (cost == UNKNOWN) {
          cost = rules.cost(before.grips().get(from), now.grips().get(j), moves[j]);
          known[pair] = cost;
        }
        costs[j] += cost;
      }
    }
  }
}
