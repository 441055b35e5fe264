package fingering.plan;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.search.Cancellation;
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
 * Finds the k best fingerings of some moments, each with the cheapest complete path that contains
 * it. Two fingerings differ if a note that begins there has another string or, if stopped, another
 * position.
 *
 * <p>Partitioning after Lawler (1972, from memory): the fingerings not yet found are divided into
 * disjoint branches. Each branch agrees with a found fingering up to some moment and differs from
 * it there. The cheapest path of each branch is found exactly; the cheapest of these is the next
 * result.
 */
final class ChoiceSearch {
  private static final Comparator<Branch> BEST_FIRST =
      Comparator.<Branch>comparingLong(branch -> branch.path().penalty())
          .thenComparingLong(branch -> branch.path().cost())
          .thenComparingInt(Branch::number);

  /**
   * A set of fingerings that contains none of those already found.
   *
   * @param path the cheapest path of the set
   * @param graph the grips that the set allows
   * @param from index into {@link #moments} of the first moment at which the set allows more than
   *     one fingering
   * @param number how many branches were created before; breaks ties
   */
  private record Branch(Path path, LayeredGraph graph, int from, int number) {}

  private final Requirement requirement;
  private final Cancellation cancellation;
  private final int[] moments;
  private final PriorityQueue<Branch> branches = new PriorityQueue<>(BEST_FIRST);
  private int number;

  private ChoiceSearch(Requirement requirement, BitSet moments, Cancellation cancellation) {
    this.requirement = requirement;
    this.cancellation = cancellation;
    this.moments = moments.stream().toArray();
  }

  /**
   * The cheapest paths with the k best fingerings, best first; fewer if there are fewer. Runs one
   * search for each moment of each result except the last.
   */
  static ImmutableList<Path> best(
      LayeredGraph graph,
      Requirement requirement,
      BitSet moments,
      int k,
      Cancellation cancellation) {
    ChoiceSearch search = new ChoiceSearch(requirement, moments, cancellation);
    search.addBranch(graph, 0);
    ImmutableList.Builder<Path> paths = ImmutableList.builder();
    for (int missing = k; missing > 0 && !search.branches.isEmpty(); missing--) {
      Branch branch = search.branches.poll();
      paths.add(branch.path());
      if (missing > 1) {
        search.divide(branch);
      }
    }
    return paths.build();
  }

  /** Adds the branches that divide a set of fingerings without its best. */
  private void divide(Branch branch) {
    LayeredGraph graph = branch.graph();
    for (int i = branch.from(); i < moments.length; i++) {
      int m = moments[i];
      LayeredGraph current = graph;
      VisibleFingering best = visible(current, m, branch.path().grips().get(m));
      addBranch(restrict(current, m, grip -> !visible(current, m, grip).equals(best)), i);
      graph = restrict(current, m, grip -> visible(current, m, grip).equals(best));
    }
  }

  private void addBranch(LayeredGraph graph, int from) {
    PathFinder.best(graph, requirement, cancellation)
        .ifPresent(path -> branches.add(new Branch(path, graph, from, number++)));
  }

  private static VisibleFingering visible(LayeredGraph graph, int m, Grip grip) {
    return VisibleFingering.of(graph.moments().get(m), grip, Grain.PLACES);
  }

  /** The graph in which a moment has only the grips that pass a test. */
  private static LayeredGraph restrict(LayeredGraph graph, int m, Predicate<Grip> test) {
    ImmutableList<Grip> grips = graph.grips().get(m);
    BitSet excluded = new BitSet();
    for (int g = 0; g < grips.size(); g++) {
      excluded.set(g, !test.test(grips.get(g)));
    }
    return graph.excluding((moment, grip) -> moment == m && excluded.get(grip));
  }
}
