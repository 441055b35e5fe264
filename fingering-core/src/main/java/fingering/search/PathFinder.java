package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.tables.FingeringException;
import java.util.Optional;
import java.util.concurrent.CancellationException;

/**
 * Finds the best paths through a layered graph, exactly, by the Viterbi algorithm. A required skill
 * is an automaton; the search runs on the product of graph and automaton. Time is linear in the
 * number of moments.
 *
 * <p>The best path has the lowest penalty and, among those, the lowest cost. Ties go to the path
 * whose last grip comes first in its list, then to the one whose grip before that does, and so on;
 * for the same grip, to the lower state of the requirement.
 */
public final class PathFinder {
  /** The number of earlier moments that the search remembers. */
  public static final int MEMORY = 1;

  /** The maximum number of paths that can be requested. */
  public static final int MAX_PATHS = 100;

  private PathFinder() {}

  /**
   * The best path, or empty if no path satisfies the requirement. Needs 8 bytes per grip, and 12
   * for each state in which paths come near the best cost.
   *
   * @throws IllegalArgumentException if a rule looks further back than the search remembers
   * @throws FingeringException if costs or penalties are too high to be compared exactly
   */
  public static Optional<Path> best(LayeredGraph graph, Requirement requirement) {
    return best(graph, requirement, Cancellation.NEVER);
  }

  /**
   * The same, unless it is cancelled.
   *
   * @throws IllegalArgumentException if a rule looks further back than the search remembers
   * @throws FingeringException if costs or penalties are too high to be compared exactly
   * @throws CancellationException if it is cancelled
   */
  public static Optional<Path> best(
      LayeredGraph graph, Requirement requirement, Cancellation cancellation) {
    refuseLongLookBack(graph);
    return BoundedSearch.best(graph, requirement, cancellation);
  }

  /**
   * The best paths with different fingerings: {@link #best(LayeredGraph, Requirement, int,
   * VisibleFingering.Grain)} with {@link VisibleFingering.Grain#FINGERS}.
   *
   * @param k the number of paths, 1 to {@value #MAX_PATHS}
   * @throws IllegalArgumentException if a rule looks further back than the search remembers
   * @throws FingeringException if k is out of range, or if costs or penalties are too high to be
   *     compared exactly
   */
  public static ImmutableList<Path> best(LayeredGraph graph, Requirement requirement, int k) {
    return best(graph, requirement, k, VisibleFingering.Grain.FINGERS, Cancellation.NEVER);
  }

  /**
   * The best paths that differ in their {@link VisibleFingering}, best first; fewer if there are
   * fewer, none if no path satisfies the requirement. Each is the best of all paths with the same
   * visible fingering. Of equal paths, the one that has the longest ending in common with an
   * earlier path comes first.
   *
   * <p>The result is exact. Needs 12 bytes for each grip in each state in which paths come near the
   * cost of the last of the k best.
   *
   * @param k the number of paths, 1 to {@value #MAX_PATHS}
   * @param grain the level of detail at which paths have to differ
   * @throws IllegalArgumentException if a rule looks further back than the search remembers
   * @throws FingeringException if k is out of range, or if costs or penalties are too high to be
   *     compared exactly
   */
  public static ImmutableList<Path> best(
      LayeredGraph graph, Requirement requirement, int k, VisibleFingering.Grain grain) {
    return best(graph, requirement, k, grain, Cancellation.NEVER);
  }

  /**
   * The same, unless it is cancelled.
   *
   * @param k the number of paths, 1 to {@value #MAX_PATHS}
   * @param grain the level of detail at which paths have to differ
   * @throws IllegalArgumentException if a rule looks further back than the search remembers
   * @throws FingeringException if k is out of range, or if costs or penalties are too high to be
   *     compared exactly
   * @throws CancellationException if it is cancelled
   */
  public static ImmutableList<Path> best(
      LayeredGraph graph,
      Requirement requirement,
      int k,
      VisibleFingering.Grain grain,
      Cancellation cancellation) {
    refuseLongLookBack(graph);
    if (k < 1 || k > MAX_PATHS) {
      throw new FingeringException(k + " plans cannot be made; ask for 1 to " + MAX_PATHS);
    }
    return BoundedSearch.best(graph, requirement, k, grain, cancellation);
  }

  private static void refuseLongLookBack(LayeredGraph graph) {
    if (graph.scoring().lookBack() > MEMORY) {
      throw new IllegalArgumentException(
          "a rule looks back "
              + graph.scoring().lookBack()
              + " moments, but the search remembers only "
              + MEMORY);
    }
  }
}
