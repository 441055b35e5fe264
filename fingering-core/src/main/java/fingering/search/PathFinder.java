package fingering.search;

import com.google.common.collect.ImmutableList;
import fingering.tables.FingeringException;
import java.util.Optional;

/**
 * Finds the best paths through the layers that satisfy a requirement, exactly, by dynamic
 * programming over grips and states of the requirement. Time is linear in moments.
 *
 * <p>Best is first the least penalty, then the least cost. Among equals the path whose last grip
 * stands earlier in its layer wins, then the one before it, and so on back; grips alike, the lower
 * state of the requirement.
 */
public final class PathFinder {
  /** How many moments before the present one the search keeps. */
  public static final int MEMORY = 1;

  /** The most paths that can be asked for. */
  public static final int MOST = 100;

  private PathFinder() {}

  /**
   * The best path, or empty where no path satisfies the requirement. Takes 8 bytes for each grip,
   * and as much for each of the states in which paths come near the best.
   *
   * @throws IllegalArgumentException if a rule looks further back than the search keeps
   */
  public static Optional<Path> best(LayeredGraph layers, Requirement requirement) {
    refuseLongLookBack(layers);
    ForwardPass free = ForwardPass.of(layers, Requirement.NONE);
    Optional<Path> cheapest = free.best();
    if (cheapest.isEmpty() || (requirement.states() == 1 && requirement.satisfied(0))) {
      return cheapest;
    }
    return new SkillSearch(layers, free, cheapest.get()).best(requirement);
  }

  /**
   * The best paths that a player can tell apart; {@link #best(LayeredGraph, Requirement, int,
   * VisibleFingering.Grain)} with {@link VisibleFingering.Grain#FINGERS}.
   *
   * @param k how many, 1 to {@value #MOST}
   * @throws IllegalArgumentException if a rule looks further back than the search keeps
   * @throws FingeringException if k is out of range
   */
  public static ImmutableList<Path> best(LayeredGraph layers, Requirement requirement, int k) {
    return best(layers, requirement, k, VisibleFingering.Grain.FINGERS);
  }

  /**
   * The best paths that differ in {@link VisibleFingering} somewhere, best first; fewer where there
   * are fewer, none where no path satisfies the requirement. The first is the best path. Of the
   * paths that look alike the best stands for all. Among equals the one that shares the longest
   * ending with a path before it comes first.
   *
   * <p>Every path is exact in its place. Each further path takes at most twice the time of the
   * best, as a rule far less. Takes 8 bytes for each grip and state: under 120 MB for 20,000
   * moments of 40 grips and 18 states, a stay of 8 notes.
   *
   * @param k how many, 1 to {@value #MOST}
   * @param grain how closely to look for a difference
   * @throws IllegalArgumentException if a rule looks further back than the search keeps
   * @throws FingeringException if k is out of range
   */
  public static ImmutableList<Path> best(
      LayeredGraph layers, Requirement requirement, int k, VisibleFingering.Grain grain) {
    refuseLongLookBack(layers);
    if (k < 1 || k > MOST) {
      throw new FingeringException(k + " best paths cannot be searched; ask for 1 to " + MOST);
    }
    return DistinctPaths.best(layers, requirement, k, grain);
  }

  private static void refuseLongLookBack(LayeredGraph layers) {
    if (layers.scoring().lookBack() > MEMORY) {
      throw new IllegalArgumentException(
          "a rule looks back "
              + layers.scoring().lookBack()
              + " moments, but the search keeps "
              + MEMORY);
    }
  }
}
