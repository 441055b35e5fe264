package fingering.search;

import static fingering.search.ForwardPass.UNREACHABLE;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableIntArray;
import fingering.fingerboard.Grip;
import java.util.Comparator;
import java.util.OptionalInt;
import java.util.TreeSet;

/**
 * Finds the k best paths with different visible fingerings, by Lawler's partition (E. L. Lawler,
 * 1972, from memory).
 *
 * <p>Paths with the same visible fingering are one path through classes of grips. The search
 * enumerates paths through classes, so it meets none twice. It divides them by suffix: a class for
 * each moment from some moment to the end. A suffix stores, for each grip of its first class and
 * each state, the lowest score from there to the end of the passage; together with the scores of
 * the forward pass this gives the exact score of the best path with that suffix. The search takes
 * the best suffix from a queue, extends it to the first moment along its best path, and queues the
 * suffixes that branch off on the way. Suffixes in the queue have no path in common, so the queue
 * never needs more entries than paths are still wanted.
 */
final class DistinctPaths {
  /** A suffix in the queue. */
  private static final class Suffix {
    /** Best first; of equal ones the longest first, then the one with the lowest node. */
    static final Comparator<Suffix> BEST_FIRST =
        Comparator.<Suffix>comparingLong(suffix -> suffix.score)
            .thenComparingInt(suffix -> suffix.moment)
            .thenComparingInt(suffix -> suffix.node)
            .thenComparingLong(suffix -> suffix.number);

    /** The score of the best path with this suffix. */
    final long score;

    /** The first moment of the suffix. */
    final int moment;

    /** The node of the best path at that moment. */
    final int node;

    /** The number of suffixes queued before. */
    final long number;

    /** The class at that moment. */
    final int firstClass;

    /**
     * The classes of the path from which the suffix branches off; it has those of later moments.
     */
    final int[] laterClasses;

    /**
     * Indexed by member of the first class, then state: the lowest score from after it to the end.
     */
    final long[] toEnd;

    Suffix(
        long score,
        int moment,
        int node,
        long number,
        int firstClass,
        int[] laterClasses,
        long[] toEnd) {
      this.score = score;
      this.moment = moment;
      this.node = node;
      this.number = number;
      this.firstClass = firstClass;
      this.laterClasses = laterClasses;
      this.toEnd = toEnd;
    }
  }

  private final LayeredGraph graph;
  private final Requirement requirement;
  private final Automaton automaton;
  private final int states;
  private final ForwardPass pass;

  /** Indexed by moment: the classes of its grips. */
  private final ImmutableList<EquivalenceClasses> classes;

  private final TreeSet<Suffix> queue = new TreeSet<>(Suffix.BEST_FIRST);
  private long number;

  private DistinctPaths(LayeredGraph graph, Requirement requirement, VisibleFingering.Grain grain) {
    this.graph = graph;
    this.requirement = requirement;
    automaton = new Automaton(graph, requirement);
    states = requirement.states();
    pass = ForwardPass.of(graph, requirement);
    ImmutableList.Builder<EquivalenceClasses> all = ImmutableList.builder();
    for (int m = 0; m < graph.moments().size(); m++) {
      all.add(EquivalenceClasses.of(graph.moments().get(m), graph.grips().get(m), grain));
    }
    classes = all.build();
  }

  /** The k best paths with different visible fingerings, best first; fewer if there are fewer. */
  static ImmutableList<Path> best(
      LayeredGraph graph, Requirement requirement, int k, VisibleFingering.Grain grain) {
    DistinctPaths search = new DistinctPaths(graph, requirement, grain);
    search.queueLastMoment(k);
    ImmutableList.Builder<Path> found = ImmutableList.builder();
    for (int wanted = k - 1; wanted >= 0 && !search.queue.isEmpty(); wanted--) {
      int[] path = search.extend(search.queue.pollFirst(), wanted);
      PathFinder.best(search.onlyClasses(path), requirement).ifPresent(found::add);
    }
    return found.build();
  }

  /** Queues the suffixes that consist of the last moment only. */
  private void queueLastMoment(int wanted) {
    int last = graph.moments().size() - 1;
    long[] toEnd = new long[graph.grips().get(last).size() * states];
    for (int node = 0; node < toEnd.length; node++) {
      toEnd[node] = requirement.satisfied(node % states) ? 0 : UNREACHABLE;
    }
    queue(last, toEnd, OptionalInt.empty(), new int[last + 1], wanted);
  }

  /**
   * Extends a suffix along its best path to the first moment, queues the suffixes that branch off,
   * and returns the classes of the path.
   */
  private int[] extend(Suffix suffix, int wanted) {
    int[] path = suffix.laterClasses.clone();
    path[suffix.moment] = suffix.firstClass;
    int[] nodes = pass.backtrack(suffix.moment, suffix.node);
    long[] toEnd = suffix.toEnd;
    for (int m = suffix.moment - 1; m >= 0; m--) {
      path[m] = classes.get(m).classOf().get(nodes[m] / states);
      if (wanted > 0) {
        long[] all = toEndBefore(m, classes.get(m + 1).members().get(path[m + 1]), toEnd);
        queue(m, all, OptionalInt.of(path[m]), path, wanted);
        toEnd = ofMembers(classes.get(m).members().get(path[m]), all);
      }
    }
    return path;
  }

  /**
   * Indexed by node of a moment: the lowest score from after it to the end.
   *
   * @param nextMembers the grips that the next moment may use
   * @param nextToEnd indexed by member of these, then state: the lowest score from after it to the
   *     end
   */
  private long[] toEndBefore(int m, ImmutableIntArray nextMembers, long[] nextToEnd) {
    ImmutableList<Grip> now = graph.grips().get(m);
    EdgeCosts edges = pass.edges(m + 1);
    long[] own = pass.nodeScores(m + 1);
    long[] scores = pass.scores(m);
    long[] all = ForwardPass.unreachable(now.size() * states);
    for (int member = 0; member < nextMembers.length(); member++) {
      int to = nextMembers.get(member);
      if (own[to] == UNREACHABLE) {
        continue;
      }
      Grip next = graph.grips().get(m + 1).get(to);
      for (int i = 0; i < now.size(); i++) {
        if (ForwardPass.unreachable(scores, i * states, states)) {
          continue;
        }
        long edge = edges.cost(i, to) + own[to];
        int[] after = automaton.after(m + 1, now.get(i), next);
        for (int s = 0; s < states; s++) {
          int node = i * states + s;
          long rest = nextToEnd[member * states + after[s]];
          if (scores[node] != UNREACHABLE && rest != UNREACHABLE) {
            all[node] = Math.min(all[node], edge + rest);
          }
        }
      }
    }
    return all;
  }

  /**
   * Queues the suffixes that begin at a moment, one for each class, and drops the worst ones that
   * are too many.
   *
   * @param taken the class that the current path takes, which is not queued
   */
  private void queue(int m, long[] toEnd, OptionalInt taken, int[] laterClasses, int wanted) {
    ImmutableList<ImmutableIntArray> members = classes.get(m).members();
    for (int c = 0; c < members.size(); c++) {
      if (taken.isPresent() && taken.getAsInt() == c) {
        continue;
      }
      OptionalInt best = best(m, members.get(c), toEnd);
      if (best.isPresent()) {
        int node = best.getAsInt();
        long score = pass.scores(m)[node] + toEnd[node];
        long[] ofClass = ofMembers(members.get(c), toEnd);
        queue.add(new Suffix(score, m, node, number++, c, laterClasses, ofClass));
        if (queue.size() > wanted) {
          queue.pollLast();
        }
      }
    }
  }

  /** The node of a class on the best path through the class, or empty if there is no path. */
  private OptionalInt best(int m, ImmutableIntArray members, long[] toEnd) {
    long[] scores = pass.scores(m);
    int best = -1;
    for (int member = 0; member < members.length(); member++) {
      int from = members.get(member) * states;
      for (int node = from; node < from + states; node++) {
        if (scores[node] != UNREACHABLE
            && toEnd[node] != UNREACHABLE
            && (best < 0 || scores[node] + toEnd[node] < scores[best] + toEnd[best])) {
          best = node;
        }
      }
    }
    return best < 0 ? OptionalInt.empty() : OptionalInt.of(best);
  }

  /** The scores of the nodes of some grips. */
  private long[] ofMembers(ImmutableIntArray members, long[] scores) {
    long[] some = new long[members.length() * states];
    for (int member = 0; member < members.length(); member++) {
      System.arraycopy(scores, members.get(member) * states, some, member * states, states);
    }
    return some;
  }

  /** The graph limited to one class for each moment. */
  private LayeredGraph onlyClasses(int[] path) {
    return graph.excluding((m, grip) -> classes.get(m).classOf().get(grip) != path[m]);
  }
}
