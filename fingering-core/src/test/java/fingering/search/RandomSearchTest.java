package fingering.search;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import fingering.demand.AllRequirements;
import fingering.search.EveryPath.Walked;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/**
 * The search against every path of a few notes, including the order of equal paths. Costs,
 * penalties and requirements are random.
 */
class RandomSearchTest {
  private static Optional<Path> first(LayeredGraph graph, Requirement requirement) {
    return EveryPath.through(graph, requirement).stream().map(Walked::path).findFirst();
  }

  @Property(tries = 200)
  void theBestPathIsTheFirstOfAll(@ForAll int seed, @ForAll @IntRange(min = 1, max = 4) int notes) {
    LayeredGraph graph = RandomGraph.graph(seed, notes);
    assertThat(PathFinder.best(graph, Requirement.NONE)).isEqualTo(first(graph, Requirement.NONE));
  }

  @Property(tries = 200)
  void theBestPathForARequirementIsTheFirstThatSatisfiesIt(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 4) int notes) {
    LayeredGraph graph = RandomGraph.graph(seed, notes);
    Requirement requirement = RandomGraph.requirement(seed);
    assertThat(PathFinder.best(graph, requirement)).isEqualTo(first(graph, requirement));
  }

  @Property(tries = 200)
  void theBestPathForTwoRequirementsIsTheFirstThatSatisfiesBoth(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 4) int notes) {
    LayeredGraph graph = RandomGraph.graph(seed, notes);
    Requirement both =
        AllRequirements.of(
            ImmutableList.of(
                RandomGraph.requirement(seed),
                Requirement.NONE,
                RandomGraph.requirement(seed + 1L)));
    assertThat(PathFinder.best(graph, both)).isEqualTo(first(graph, both));
  }

  @Property(tries = 200)
  void distinctPathsAreInTheOrderOfAllPaths(
      @ForAll int seed,
      @ForAll @IntRange(min = 1, max = 4) int notes,
      @ForAll @IntRange(min = 1, max = 12) int k) {
    LayeredGraph graph = RandomGraph.graph(seed, notes);
    assertThat(PathFinder.best(graph, Requirement.NONE, k))
        .isEqualTo(DistinctWalk.best(EveryPath.through(graph, Requirement.NONE), k, Seen::of));
  }

  @Property(tries = 200)
  void distinctPathsForARequirementAreInTheOrderOfAllThatSatisfyIt(
      @ForAll int seed,
      @ForAll @IntRange(min = 1, max = 4) int notes,
      @ForAll @IntRange(min = 1, max = 12) int k) {
    LayeredGraph graph = RandomGraph.graph(seed, notes);
    Requirement requirement = RandomGraph.requirement(seed);
    assertThat(PathFinder.best(graph, requirement, k, VisibleFingering.Grain.PLACES))
        .isEqualTo(DistinctWalk.best(EveryPath.through(graph, requirement), k, Seen::places));
  }

  @Property(tries = 200)
  void aPathExactlyAtTheBoundIsFoundAndNoneAboveIt(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 4) int notes) {
    LayeredGraph graph = RandomGraph.graph(seed, notes);
    Requirement requirement = RandomGraph.requirement(seed);
    ForwardPass unconstrained = ForwardPass.of(graph, new Steps(Cancellation.NEVER));
    Optional<Path> best = first(graph, requirement);
    best.ifPresent(
        path -> {
          long score = ForwardPass.score(path);
          assertThat(within(graph, requirement, unconstrained, score)).isEqualTo(best);
          assertThat(within(graph, requirement, unconstrained, score - 1)).isEmpty();
        });
  }

  private static Optional<Path> within(
      LayeredGraph graph, Requirement requirement, ForwardPass unconstrained, long bound) {
    Automaton automaton = new Automaton(graph, requirement);
    Corridor corridor = Corridor.of(unconstrained, bound, new Steps(Cancellation.NEVER));
    BoundedForwardPass pass =
        new BoundedForwardPass(graph, automaton, unconstrained, corridor, ImmutableList.of(), bound)
            .run((m, grip) -> true, new Steps(Cancellation.NEVER));
    return pass.best();
  }

  @Property(tries = 200)
  void aGripIsInTheCorridorIfTheBestPathThroughItIsWithinTheLimit(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 4) int notes) {
    LayeredGraph graph = RandomGraph.graph(seed, notes);
    ForwardPass unconstrained = ForwardPass.of(graph, new Steps(Cancellation.NEVER));
    List<Walked> all = EveryPath.through(graph, Requirement.NONE);
    long limit = unconstrained.best().map(path -> ForwardPass.score(path) + 5).orElse(5L);
    Corridor corridor = Corridor.of(unconstrained, limit, new Steps(Cancellation.NEVER));
    for (int m = 0; m < notes; m++) {
      for (int j = 0; j < graph.grips().get(m).size(); j++) {
        int at = m;
        int grip = j;
        OptionalLong through =
            all.stream()
                .filter(walked -> walked.nodes().get(at) == grip)
                .mapToLong(walked -> ForwardPass.score(walked.path()))
                .min();
        int index = corridor.grips(m).indexOf(grip);
        assertThat(index >= 0).isEqualTo(through.isPresent() && through.getAsLong() <= limit);
        if (index >= 0) {
          assertThat(unconstrained.scores(m)[j] + corridor.toEnd(m, index))
              .isEqualTo(through.getAsLong());
        }
      }
    }
  }

  @Property(tries = 200)
  void whatAGripNeedsToTheEndIsWhatTheBestPathThroughItNeeds(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 4) int notes) {
    LayeredGraph graph = RandomGraph.graph(seed, notes);
    Requirement requirement = RandomGraph.requirement(seed);
    ForwardPass unconstrained = ForwardPass.of(graph, new Steps(Cancellation.NEVER));
    Corridor corridor =
        Corridor.of(unconstrained, ForwardPass.UNREACHABLE - 1, new Steps(Cancellation.NEVER));
    RemainingScores remaining =
        RemainingScores.of(
            new Automaton(graph, requirement),
            unconstrained,
            corridor,
            new Steps(Cancellation.NEVER));
    assertThat(remaining.best())
        .isEqualTo(
            first(graph, requirement).map(ForwardPass::score).orElse(ForwardPass.UNREACHABLE));
  }
}
