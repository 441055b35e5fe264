package fingering.search;

import com.google.common.collect.ImmutableList;
import java.util.Optional;

/**
 * Finds the best path that satisfies a requirement, looking first among those that cost little more
 * than the best that shows nothing. What is found within a bound is the best of all, and the closer
 * the bound the less there is to look at.
 */
final class SkillSearch {
  /**
   * At first paths are sought up to this share above the cheapest, then twice as far, and so on.
   */
  private static final int FIRST_SHARE = 512;

  private final LayeredGraph layers;

  /** The pass through the layers without a requirement. */
  private final ForwardPass free;

  private final Path cheapest;
  private final CostBound bound;

  SkillSearch(LayeredGraph layers, ForwardPass free, Path cheapest) {
    this.layers = layers;
    this.free = free;
    this.cheapest = cheapest;
    bound = CostBound.of(layers, free);
  }

  /** The best path that satisfies the requirement, or empty where none does. */
  Optional<Path> best(Requirement requirement) {
    ImmutableList<Requirement> parts = requirement.parts();
    long more = 0;
    if (parts.size() > 1) {
      // Skills are mostly shown in different places, so that each costs what it costs alone.
      for (Requirement part : parts) {
        Optional<Path> alone = best(part);
        if (alone.isEmpty()) {
          return alone;
        }
        more += Math.max(0, alone.get().cost() - cheapest.cost());
      }
    }
    Automaton automaton = new Automaton(layers, requirement);
    long wider = Math.max(1, cheapest.cost() / FIRST_SHARE);
    for (; more <= Math.max(wider, cheapest.cost()); more = Math.max(2 * more, wider)) {
      Optional<Path> found =
          BoundedForwardPass.best(layers, automaton, free, bound.above(cheapest, more));
      if (found.isPresent()) {
        return found;
      }
    }
    return BoundedForwardPass.best(layers, automaton, free, bound);
  }
}
