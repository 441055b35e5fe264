package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.scoring.PacedNote;
import fingering.scoring.TimedTransition;
import fingering.tables.FingeringException;
import java.util.Arrays;
import java.util.Optional;

/**
 * The least sums with which every grip is reached in every state of the requirement, from the first
 * moment to the last. A node is a grip with a state: index of the grip times number of states, plus
 * the state. Takes 8 bytes a node.
 */
final class ForwardPass {
  /** The sum of what cannot be reached. */
  static final long NONE = Long.MAX_VALUE;

  /**
   * A sum has the cost in its lowest bits, this many, and the penalty above them. Sums therefore
   * order paths by penalty, then by cost. Passages in which a cost or a penalty may not fit are
   * refused.
   */
  private static final int PENALTY_BITS = 44;

  private static final long MAX_COST = (1L << PENALTY_BITS) - 1;

  /** One less than fits, so that no sum is {@link #NONE}. */
  private static final long MAX_PENALTY = (1L << (Long.SIZE - 1 - PENALTY_BITS)) - 2;

  private final LayeredGraph layers;
  private final Automaton automaton;
  private final int states;

  /** The sums of the nodes of every moment. */
  private final long[][] sums;

  /** What the grips of each moment cost by themselves, and the ways to them. */
  private final NodeCosts[] nodes;

  private final EdgeCostView[] ways;

  /** By moment, {@link #own}; those not asked for are missing. */
  private final long[][] own;

  /** The numbers by which the costs know the grips of each moment. */
  private final int[] numbers;

  /** How slow the music is around each moment. */
  private final long[] slowness;

  /** Whether every grip can be taken and costs nothing but points. */
  private final boolean free;

  /** No path up to the moment reached costs more. */
  private long costBound;

  /** No path up to the moment reached has a higher penalty. */
  private long penaltyBound;

  private ForwardPass(LayeredGraph layers, Requirement requirement) {
    this.layers = layers;
    this.automaton = new Automaton(layers, requirement);
    states = requirement.states();
    sums = new long[layers.moments().size()][];
    nodes = new NodeCosts[sums.length];
    ways = new EdgeCostView[sums.length];
    own = new long[sums.length][];
    slowness = new long[sums.length];
    numbers = new int[sums.length];
    for (int m = 0; m < numbers.length; m++) {
      numbers[m] = layers.costs().number(layers.grips().get(m));
    }
    free = layers.closed() == NodeFilter.NONE && layers.penalty() == Penalty.NONE;
  }

  /** Passes through the layers. */
  static ForwardPass of(LayeredGraph layers, Requirement requirement) {
    ForwardPass pass = new ForwardPass(layers, requirement);
    pass.sums[0] = pass.first();
    pass.refuseHighCosts(0);
    for (int m = 1; m < pass.sums.length; m++) {
      pass.sums[m] = pass.next(m);
      pass.refuseHighCosts(m);
    }
    return pass;
  }

  private void refuseHighCosts(int m) {
    costBound += nodes(m).most(slowness[m]) + (m == 0 ? 0 : ways[m].most());
    if (costBound > MAX_COST) {
      throw new FingeringException(
          "by these weights a plan may cost more than %d points; divide all of them by ten"
              .formatted(MAX_COST));
    }
  }

  private long[] first() {
    ImmutableList<Grip> grips = layers.grips().get(0);
    long[] reached = unreached(grips.size() * states);
    long[] own = own(0);
    for (int j = 0; j < grips.size(); j++) {
      if (own[j] != NONE) {
        reached[j * states + automaton.after(0, grips.get(j), grips.get(j))[0]] = own[j];
      }
    }
    return reached;
  }

  /** Sums of so many nodes, none of them reached. */
  static long[] unreached(int nodes) {
    long[] sums = new long[nodes];
    Arrays.fill(sums, NONE);
    return sums;
  }

  private long[] next(int m) {
    ImmutableList<Grip> now = layers.grips().get(m);
    TimedTransition transition =
        TimedTransition.between(layers.moments().get(m - 1), layers.moments().get(m));
    ways[m] =
        layers.costs().of(transition, numbers[m - 1], numbers[m], layers.grips().get(m - 1), now);
    long[] next = unreached(now.size() * states);
    if (states == 1) {
      ways[m].reach(sums[m - 1], next);
    } else if (automaton.looksBack()) {
      reachLookingBack(m, next);
    } else {
      reachInAllStates(m, next);
    }
    if (states == 1 && free) {
      nodes(m).addTo(next, slowness[m]);
    } else {
      addOwn(m, next);
    }
    return next;
  }

  private void addOwn(int m, long[] sums) {
    long[] own = own(m);
    for (int j = 0; j < own.length; j++) {
      for (int at = j * states; at < (j + 1) * states; at++) {
        sums[at] = plus(sums[at], own[j]);
      }
    }
  }

  /** Reaches every grip from those in every state, where the grip reached alone has a say. */
  private void reachInAllStates(int m, long[] next) {
    int[][] after = automaton.after(m);
    long[] before = new long[layers.grips().get(m - 1).size()];
    long[] reached = new long[after.length];
    for (int s = 0; s < states; s++) {
      for (int i = 0; i < before.length; i++) {
        before[i] = sums[m - 1][i * states + s];
      }
      Arrays.fill(reached, NONE);
      if (ways[m].reach(before, reached)) {
        for (int j = 0; j < reached.length; j++) {
          int to = j * states + after[j][s];
          next[to] = Math.min(next[to], reached[j]);
        }
      }
    }
  }

  /** Reaches every grip from those in every state, where the grip left has a say too. */
  private void reachLookingBack(int m, long[] next) {
    ImmutableList<Grip> before = layers.grips().get(m - 1);
    ImmutableList<Grip> now = layers.grips().get(m);
    for (int i = 0; i < before.size(); i++) {
      if (unreached(sums[m - 1], i * states, states)) {
        continue;
      }
      for (int j = 0; j < now.size(); j++) {
        int[] after = automaton.after(m, before.get(i), now.get(j));
        long way = ways[m].cost(i, j);
        for (int s = 0; s < states; s++) {
          long sum = sums[m - 1][i * states + s];
          int to = j * states + after[s];
          next[to] = sum == NONE ? next[to] : Math.min(next[to], sum + way);
        }
      }
    }
  }

  /** The costs of the ways to a moment, from the second. */
  EdgeCostView ways(int m) {
    return ways[m];
  }

  /**
   * Cost and penalty of each grip of a moment by itself, as one sum; none of what is closed. Nobody
   * changes it.
   */
  long[] own(int m) {
    if (own[m] == null) {
      NodeCosts costs = nodes(m);
      own[m] = new long[layers.grips().get(m).size()];
      long mostPenalty = 0;
      for (int j = 0; j < own[m].length; j++) {
        if (layers.closed().at(m, j)) {
          own[m][j] = NONE;
        } else {
          long penalty = layers.penalty().of(m, layers.grips().get(m).get(j));
          mostPenalty = Math.max(mostPenalty, penalty);
          own[m][j] = costs.cost(j, slowness[m]) + (penalty << PENALTY_BITS);
        }
      }
      refuseHighPenalties(mostPenalty);
    }
    return own[m];
  }

  private NodeCosts nodes(int m) {
    if (nodes[m] == null) {
      PacedNote note = PacedNote.of(layers.moments().get(m));
      slowness[m] = note.slowness();
      nodes[m] = layers.costs().of(note.context(), numbers[m], layers.grips().get(m));
    }
    return nodes[m];
  }

  private void refuseHighPenalties(long more) {
    if (more > MAX_PENALTY - penaltyBound) {
      throw new FingeringException(
          "the passage is too long for these preferences; plan a shorter one");
    }
    penaltyBound += more;
  }

  /** Whether none of so many sums is that of something reached. */
  static boolean unreached(long[] sums, int from, int many) {
    for (int at = from; at < from + many; at++) {
      if (sums[at] != NONE) {
        return false;
      }
    }
    return true;
  }

  /** Two sums as one; none where either is missing. */
  static long plus(long sum, long more) {
    return sum == NONE || more == NONE ? NONE : sum + more;
  }

  /** The sums of the nodes of a moment. */
  long[] sums(int moment) {
    return sums[moment];
  }

  /** The nodes of the best way to a node of a moment, from the first moment to that one. */
  int[] way(int moment, int node) {
    int[] way = new int[moment + 1];
    way[moment] = node;
    for (int m = moment; m > 0; m--) {
      way[m - 1] = before(m, way[m]);
    }
    return way;
  }

  /** The node from which a node of a moment is best reached, the first among equals. */
  private int before(int m, int node) {
    int reached = node / states;
    Grip now = layers.grips().get(m).get(reached);
    long sum = sums[m][node] - own(m)[reached];
    for (int at = 0; at < sums[m - 1].length; at++) {
      if (sums[m - 1][at] != NONE
          && sums[m - 1][at] + ways[m].cost(at / states, reached) == sum
          && leadsTo(m, at, now, node % states)) {
        return at;
      }
    }
    throw new IllegalStateException("no way leads to node " + node + " of moment " + m);
  }

  private boolean leadsTo(int m, int node, Grip now, int state) {
    return states == 1
        || automaton.after(m, layers.grips().get(m - 1).get(node / states), now)[node % states]
            == state;
  }

  /**
   * The best path of a pass without a requirement, or empty where no path is open. Among equals the
   * one whose last grip stands earlier, and so on back.
   */
  Optional<Path> best() {
    int last = sums.length - 1;
    int end = -1;
    long least = NONE;
    for (int j = 0; j < sums[last].length; j++) {
      if (sums[last][j] < least) {
        least = sums[last][j];
        end = j;
      }
    }
    return least == NONE ? Optional.empty() : Optional.of(path(way(last, end), least));
  }

  private Path path(int[] way, long sum) {
    ImmutableList.Builder<Grip> grips = ImmutableList.builderWithExpectedSize(way.length);
    for (int m = 0; m < way.length; m++) {
      grips.add(layers.grips().get(m).get(way[m]));
    }
    return path(grips.build(), sum);
  }

  /** Cost and penalty of a path as one sum. */
  static long sum(Path path) {
    return path.cost() + (path.penalty() << PENALTY_BITS);
  }

  /** A path of that sum. */
  static Path path(ImmutableList<Grip> grips, long sum) {
    long penalty = sum >>> PENALTY_BITS;
    return new Path(grips, sum - (penalty << PENALTY_BITS), penalty);
  }
}
