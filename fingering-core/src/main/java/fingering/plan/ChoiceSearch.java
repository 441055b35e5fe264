package fingering.plan;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.search.LayeredGraph;
import fingering.search.Path;
import fingering.search.PathFinder;
import fingering.search.Requirement;
import fingering.search.VisibleFingering;
import fingering.search.VisibleFingering.Grain;
import java.util.BitSet;
import java.util.Comparator;
import java.util.PriorityQueue;
import java.util.function.Predicate;

/**
 * The ways through some moments, each with the best whole path that has it. Two ways differ where a
 * note that begins there has another string or, stopped, another position.
 *
 * <p>The ways not yet found are parted into branches that share none: those that go with a found
 * way up to a moment and part from it there. The best path of each branch is searched exactly, and
 * the best of these bests is the next way (Lawler 1972, from memory).
 */
final class ChoiceSearch {
  private static final Comparator<Branch> BEST_FIRST =
      Comparator.<Branch>comparingLong(branch -> branch.path().penalty())
          .thenComparingLong(branch -> branch.path().cost())
          .thenComparingInt(Branch::number);

  /**
   * Ways that part from all that were found.
   *
   * @param path the best path that has one of them
   * @param layers what they may take
   * @param from which of the moments is the first at which they are not of one mind
   * @param number how many branches were made before
   */
  private record Branch(Path path, LayeredGraph layers, int from, int number) {}

  private final Requirement requirement;
  private final int[] moments;
  private final PriorityQueue<Branch> branches = new PriorityQueue<>(BEST_FIRST);
  private int number;

  private ChoiceSearch(Requirement requirement, BitSet moments) {
    this.requirement = requirement;
    this.moments = moments.stream().toArray();
  }

  /**
   * The k best ways, each by its best path, best first; fewer where there are fewer. Takes the time
   * of a search for each moment of each way but the last.
   */
  static ImmutableList<Path> best(
      LayeredGraph layers, Requirement requirement, BitSet moments, int k) {
    ChoiceSearch search = new ChoiceSearch(requirement, moments);
    search.branch(layers, 0);
    ImmutableList.Builder<Path> found = ImmutableList.builder();
    for (int wanted = k; wanted > 0 && !search.branches.isEmpty(); wanted--) {
      Branch branch = search.branches.poll();
      found.add(branch.path());
      if (wanted > 1) {
        search.part(branch);
      }
    }
    return found.build();
  }

  /** Makes the branches that part from the best way of one. */
  private void part(Branch branch) {
    LayeredGraph left = branch.layers();
    for (int i = branch.from(); i < moments.length; i++) {
      int m = moments[i];
      VisibleFingering taken = seen(left, m, branch.path().grips().get(m));
      LayeredGraph along = left;
      LayeredGraph others = only(left, m, grip -> !seen(along, m, grip).equals(taken));
      branch(others, i);
      left = only(left, m, grip -> seen(along, m, grip).equals(taken));
    }
  }

  private void branch(LayeredGraph layers, int from) {
    PathFinder.best(layers, requirement)
        .ifPresent(path -> branches.add(new Branch(path, layers, from, number++)));
  }

  private static VisibleFingering seen(LayeredGraph layers, int m, Grip grip) {
    return VisibleFingering.of(layers.moments().get(m), grip, Grain.PLACES);
  }

  private static LayeredGraph only(LayeredGraph layers, int m, Predicate<Grip> kept) {
    ImmutableList<Grip> all = layers.grips().get(m);
    BitSet closed = new BitSet();
    for (int g = 0; g < all.size(); g++) {
      closed.set(g, !kept.test(all.get(g)));
    }
    return layers.closing((moment, grip) -> moment == m && closed.get(grip));
  }
}
