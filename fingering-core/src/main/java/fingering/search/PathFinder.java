package fingering.search;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * Finds the best path through the layers that satisfies a requirement, exactly, by dynamic
 * programming over grips and states of the requirement. Time is linear in moments.
 *
 * <p>Best is first the least penalty, then the least cost. Among equals the path whose last grip
 * stands earlier in its layer wins, then the one before it, and so on back; grips alike, the lower
 * state of the requirement.
 */
public final class PathFinder {
  /** How many moments before the present one the search keeps. */
  public static final int MEMORY = 1;

  private PathFinder() {}

  /**
   * The best path, or empty where no path satisfies the requirement. Takes 4 bytes for each grip
   * and state.
   *
   * @throws IllegalArgumentException if a rule looks further back than the search keeps
   */
  public static Optional<Path> best(Layers layers, Requirement requirement) {
    refuseLongLookBack(layers);
    ForwardPass pass = ForwardPass.of(layers, requirement, false);
    OptionalInt end = pass.end();
    return end.isPresent() ? Optional.of(pass.path(end.getAsInt())) : Optional.empty();
  }

  private static void refuseLongLookBack(Layers layers) {
    if (layers.scoring().lookBack() > MEMORY) {
      throw new IllegalArgumentException(
          "a rule looks back "
              + layers.scoring().lookBack()
              + " moments, but the search keeps "
              + MEMORY);
    }
  }
}
