package fingering.search;

import static fingering.search.ForwardPass.UNREACHABLE;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.search.BoundedForwardPass.Layer;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeSet;

/**
 * Finds the k best paths with different visible fingerings, by Lawler's partition (E. L. Lawler,
 * 1972, from memory).
 *
 * <p>Paths with the same visible fingering are one path through classes of grips. The search
 * enumerates paths through classes, so it meets none twice. It divides them by suffix: a class for
 * each moment from some moment to the end. A suffix stores, for each node of its first moment, the
 * lowest score from there to the end of the passage; together with the scores of the forward pass
 * this gives the exact score of the best path with that suffix. The search takes the best suffix
 * from a queue, extends it to the first moment along its best path, and queues the suffixes that
 * branch off on the way. Suffixes in the queue have no path in common, so the queue never needs
 * more entries than paths are still wanted.
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

    /** Indexed by node of the first moment: the lowest score from after it to the end. */
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
  private final BoundedForwardPass pass;
  private final VisibleFingering.Grain grain;
  private final Steps steps;

  /**
   * Indexed by moment, then by index of a grip in its layer: the class; null where not needed yet.
   */
  private final int[][] classes;

  /** Indexed by state: the lowest score from after a grip to the end. */
  private final long[] rest;

  private final TreeSet<Suffix> queue = new TreeSet<>(Suffix.BEST_FIRST);
  private long number;

  private DistinctPaths(
      LayeredGraph graph, BoundedForwardPass pass, VisibleFingering.Grain grain, Steps steps) {
    this.graph = graph;
    this.pass = pass;
    this.grain = grain;
    this.steps = steps;
    classes = new int[graph.moments().size()][];
    rest = ForwardPass.unreachable(pass.automaton().states());
  }

  /**
   * The k best paths through the nodes of a pass with different visible fingerings, best first;
   * fewer if there are fewer. Up to the bound of the pass they are the best of all. Beyond it,
   * better paths may be missing.
   */
  static ImmutableList<Path> best(
      LayeredGraph graph,
      BoundedForwardPass pass,
      int k,
      VisibleFingering.Grain grain,
      Steps steps) {
    DistinctPaths search = new DistinctPaths(graph, pass, grain, steps);
    search.queueLastMoment(k);
    ImmutableList.Builder<Path> found = ImmutableList.builder();
    for (int wanted = k - 1; wanted >= 0 && !search.queue.isEmpty(); wanted--) {
      Suffix suffix = search.queue.pollFirst();
      found.add(search.first(search.extend(suffix, wanted), suffix.score));
    }
    return found.build();
  }

  /** The classes of the grips of a layer, in its order. */
  private int[] classes(int m) {
    if (classes[m] == null) {
      Layer layer = pass.layer(m);
      classes[m] = new int[layer.grips.length];
      Map<VisibleFingering, Integer> numbers = new HashMap<>();
      for (int i = 0; i < layer.grips.length && layer.grips.length > 1; i++) {
        Grip grip = graph.grips().get(m).get(layer.grips[i]);
        VisibleFingering visible = VisibleFingering.of(graph.moments().get(m), grip, grain);
        classes[m][i] = numbers.computeIfAbsent(visible, fingering -> numbers.size());
      }
    }
    return classes[m];
  }

  /** Queues the suffixes that consist of the last moment only. */
  private void queueLastMoment(int wanted) {
    int last = classes.length - 1;
    Layer layer = pass.layer(last);
    long[] toEnd = new long[layer.size()];
    for (int node = 0; node < toEnd.length; node++) {
      toEnd[node] = pass.automaton().satisfied(layer.states[node]) ? 0 : UNREACHABLE;
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
      path[m] = classes(m)[pass.layer(m).gripOf(nodes[m])];
      if (wanted > 0) {
        toEnd = toEndBefore(m, path[m + 1], toEnd);
        queue(m, toEnd, OptionalInt.of(path[m]), path, wanted);
      }
    }
    return path;
  }

  /**
   * Indexed by node of a moment: the lowest score from after it to the end.
   *
   * @param nextClass the class of the next moment
   * @param nextToEnd the same of the next moment
   */
  private long[] toEndBefore(int m, int nextClass, long[] nextToEnd) {
    Layer now = pass.layer(m);
    Layer next = pass.layer(m + 1);
    EdgeCosts edges = pass.edges(m + 1);
    long[] all = ForwardPass.unreachable(now.size());
    for (int j = 0; j < next.grips.length; j++) {
      if (classes(m + 1)[j] != nextClass) {
        continue;
      }
      steps.take(now.size());
      for (int node = next.first[j]; node < next.first[j + 1]; node++) {
        rest[next.states[node]] = nextToEnd[node];
      }
      long own = pass.own(m + 1, next.grips[j]);
      for (int i = 0; i < now.grips.length; i++) {
        long edge = edges.cost(now.grips[i], next.grips[j]) + own;
        int[] after = pass.automaton().after(m + 1, now.grips[i], next.grips[j]);
        for (int node = now.first[i]; node < now.first[i + 1]; node++) {
          long more = rest[after[now.states[node]]];
          if (more != UNREACHABLE) {
            all[node] = Math.min(all[node], edge + more);
          }
        }
      }
      for (int node = next.first[j]; node < next.first[j + 1]; node++) {
        rest[next.states[node]] = UNREACHABLE;
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
    Layer layer = pass.layer(m);
    int[] best = new int[layer.grips.length];
    Arrays.fill(best, -1);
    for (int i = 0; i < layer.grips.length; i++) {
      int ofClass = classes(m)[i];
      for (int node = layer.first[i]; node < layer.first[i + 1]; node++) {
        if (toEnd[node] != UNREACHABLE
            && (best[ofClass] < 0
                || score(layer, toEnd, node) < score(layer, toEnd, best[ofClass]))) {
          best[ofClass] = node;
        }
      }
    }
    for (int c = 0; c < best.length; c++) {
      if (best[c] >= 0 && (taken.isEmpty() || taken.getAsInt() != c)) {
        long score = score(layer, toEnd, best[c]);
        queue.add(new Suffix(score, m, best[c], number++, c, laterClasses, toEnd));
        if (queue.size() > wanted) {
          queue.pollLast();
        }
      }
    }
  }

  /** The score of the best path through a node whose rest is known. */
  private static long score(Layer layer, long[] toEnd, int node) {
    return layer.scores[node] + toEnd[node];
  }

  /** The first of the best paths through the classes. */
  private Path first(int[] path, long score) {
    return pass.among((m, grip) -> isIn(m, grip, path[m]), score, steps).best().orElseThrow();
  }

  private boolean isIn(int m, int grip, int ofClass) {
    int i = Arrays.binarySearch(pass.layer(m).grips, grip);
    return i >= 0 && classes(m)[i] == ofClass;
  }
}
