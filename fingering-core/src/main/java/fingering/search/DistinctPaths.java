package fingering.search;

import static fingering.search.ForwardPass.NONE;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableIntArray;
import fingering.fingerboard.Grip;
import java.util.Comparator;
import java.util.OptionalInt;
import java.util.TreeSet;

/**
 * Finds the best paths that look different.
 *
 * <p>Paths that look alike form one path through groups of grips, so what is searched are paths
 * through groups, and none is met twice. They are built from their end: an ending is a group for
 * each moment from some moment on, and carries, for each grip of its first group and each state,
 * the least sum to the end of the passage. With the sums of the forward pass that tells exactly
 * what the best path with this ending costs. The search therefore follows the best ending it knows
 * straight to the beginning, lays aside the endings that part from it on the way, and takes up the
 * best of those next. Endings share no path, so that no more need be laid aside than paths are
 * still wanted.
 */
final class DistinctPaths {
  /** An ending laid aside. */
  private static final class Ending {
    /** Of equals the longer comes first, then the one whose grip stands earlier. */
    static final Comparator<Ending> BEST_FIRST =
        Comparator.<Ending>comparingLong(ending -> ending.sum)
            .thenComparingInt(ending -> ending.moment)
            .thenComparingInt(ending -> ending.node)
            .thenComparingLong(ending -> ending.number);

    /** Sum of the best path that ends so. */
    final long sum;

    /** The first moment of the ending. */
    final int moment;

    /** The node through which the best path goes at that moment. */
    final int node;

    /** How many endings were laid aside before. */
    final long number;

    /** The group at that moment. */
    final int group;

    /** Groups of the path from which the ending parts there; after that moment they are its own. */
    final int[] later;

    /** The sums from after that moment to the end, by grip of the group and state. */
    final long[] rest;

    Ending(long sum, int moment, int node, long number, int group, int[] later, long[] rest) {
      this.sum = sum;
      this.moment = moment;
      this.node = node;
      this.number = number;
      this.group = group;
      this.later = later;
      this.rest = rest;
    }
  }

  private final LayeredGraph layers;
  private final Requirement requirement;
  private final Automaton automaton;
  private final int states;
  private final ForwardPass pass;
  private final ImmutableList<EquivalenceClasses> lookalikes;
  private final TreeSet<Ending> aside = new TreeSet<>(Ending.BEST_FIRST);
  private long number;

  private DistinctPaths(
      LayeredGraph layers, Requirement requirement, VisibleFingering.Grain grain) {
    this.layers = layers;
    this.requirement = requirement;
    automaton = new Automaton(layers, requirement);
    states = requirement.states();
    pass = ForwardPass.of(layers, requirement);
    ImmutableList.Builder<EquivalenceClasses> all = ImmutableList.builder();
    for (int m = 0; m < layers.moments().size(); m++) {
      all.add(EquivalenceClasses.among(layers.moments().get(m), layers.grips().get(m), grain));
    }
    lookalikes = all.build();
  }

  /** The k best paths that look different, best first; fewer where there are fewer. */
  static ImmutableList<Path> best(
      LayeredGraph layers, Requirement requirement, int k, VisibleFingering.Grain grain) {
    DistinctPaths search = new DistinctPaths(layers, requirement, grain);
    search.begin(k);
    ImmutableList.Builder<Path> found = ImmutableList.builder();
    for (int wanted = k - 1; wanted >= 0 && !search.aside.isEmpty(); wanted--) {
      int[] groups = search.follow(search.aside.pollFirst(), wanted);
      // The best of the paths that look so is the best where there are no others.
      PathFinder.best(search.only(groups), requirement).ifPresent(found::add);
    }
    return found.build();
  }

  /** Lays aside the endings of a single moment. */
  private void begin(int most) {
    int last = layers.moments().size() - 1;
    long[] rest = new long[layers.grips().get(last).size() * states];
    for (int at = 0; at < rest.length; at++) {
      rest[at] = requirement.satisfied(at % states) ? 0 : NONE;
    }
    layAside(last, rest, OptionalInt.empty(), new int[last + 1], most);
  }

  /** Follows an ending to the beginning and lays aside what parts from it; returns its groups. */
  private int[] follow(Ending ending, int wanted) {
    int[] groups = ending.later.clone();
    groups[ending.moment] = ending.group;
    int[] way = pass.way(ending.moment, ending.node);
    long[] rest = ending.rest;
    for (int m = ending.moment - 1; m >= 0; m--) {
      groups[m] = lookalikes.get(m).groupOf().get(way[m] / states);
      if (wanted > 0) {
        long[] all = restBefore(m, lookalikes.get(m + 1).groups().get(groups[m + 1]), rest);
        layAside(m, all, OptionalInt.of(groups[m]), groups, wanted);
        rest = of(lookalikes.get(m).groups().get(groups[m]), all);
      }
    }
    return groups;
  }

  /**
   * The least sums from after a moment to the end, by grip of that moment and state.
   *
   * @param group the grips open to the moment after
   * @param rest the same sums for these
   */
  private long[] restBefore(int m, ImmutableIntArray group, long[] rest) {
    ImmutableList<Grip> now = layers.grips().get(m);
    EdgeCostView ways = pass.ways(m + 1);
    long[] own = pass.own(m + 1);
    long[] sums = pass.sums(m);
    long[] all = ForwardPass.unreached(now.size() * states);
    for (int g = 0; g < group.length(); g++) {
      int reached = group.get(g);
      if (own[reached] == NONE) {
        continue;
      }
      Grip next = layers.grips().get(m + 1).get(reached);
      for (int i = 0; i < now.size(); i++) {
        if (ForwardPass.unreached(sums, i * states, states)) {
          continue;
        }
        long edge = ways.cost(i, reached) + own[reached];
        int[] after = automaton.after(m + 1, now.get(i), next);
        for (int s = 0; s < states; s++) {
          int at = i * states + s;
          long onward = rest[g * states + after[s]];
          if (sums[at] != NONE && onward != NONE) {
            all[at] = Math.min(all[at], edge + onward);
          }
        }
      }
    }
    return all;
  }

  /** Lays aside the endings that begin at a moment, but for the one taken, and keeps the best. */
  private void layAside(int m, long[] rest, OptionalInt taken, int[] later, int most) {
    ImmutableList<ImmutableIntArray> groups = lookalikes.get(m).groups();
    for (int g = 0; g < groups.size(); g++) {
      if (taken.isPresent() && taken.getAsInt() == g) {
        continue;
      }
      OptionalInt node = best(m, groups.get(g), rest);
      if (node.isPresent()) {
        int at = node.getAsInt();
        long sum = pass.sums(m)[at] + rest[at];
        aside.add(new Ending(sum, m, at, number++, g, later, of(groups.get(g), rest)));
        if (aside.size() > most) {
          aside.pollLast();
        }
      }
    }
  }

  /** The node of a group through which the best path goes, or empty where none does. */
  private OptionalInt best(int m, ImmutableIntArray group, long[] rest) {
    long[] reached = pass.sums(m);
    int best = -1;
    for (int g = 0; g < group.length(); g++) {
      int from = group.get(g) * states;
      for (int at = from; at < from + states; at++) {
        if (reached[at] != NONE
            && rest[at] != NONE
            && (best < 0 || reached[at] + rest[at] < reached[best] + rest[best])) {
          best = at;
        }
      }
    }
    return best < 0 ? OptionalInt.empty() : OptionalInt.of(best);
  }

  /** The sums of a group alone. */
  private long[] of(ImmutableIntArray group, long[] sums) {
    long[] some = new long[group.length() * states];
    for (int g = 0; g < group.length(); g++) {
      System.arraycopy(sums, group.get(g) * states, some, g * states, states);
    }
    return some;
  }

  /** The layers with one group for each moment. */
  private LayeredGraph only(int[] groups) {
    return layers.closing((m, grip) -> lookalikes.get(m).groupOf().get(grip) != groups[m]);
  }
}
