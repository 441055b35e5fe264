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
    ForwardPass unconstrained = ForwardPass.of(graph, Requirement.NONE);
    Optional<Path> best = first(graph, requirement);
    best.ifPresent(
        path -> {
          Path cheapest = unconstrained.best().orElseThrow();
          long more = ForwardPass.score(path) - ForwardPass.score(cheapest);
          CostBound bound = CostBound.of(graph, unconstrained);
          Automaton automaton = new Automaton(graph, requirement);
          assertThat(
                  BoundedForwardPass.best(
                      graph, automaton, unconstrained, bound.above(cheapest, more)))
              .isEqualTo(best);
          assertThat(
                  BoundedForwardPass.best(
                      graph, automaton, unconstrained, bound.above(cheapest, more - 1)))
              .isEmpty();
        });
  }

  @Property(tries = 200)
  void theLimitOfAGripIsTheBoundMinusTheBestContinuation(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 4) int notes) {
    LayeredGraph graph = RandomGraph.graph(seed, notes);
    ForwardPass unconstrained = ForwardPass.of(graph, Requirement.NONE);
    List<Walked> all = EveryPath.through(graph, Requirement.NONE);
    Optional<Path> cheapest = unconstrained.best();
    CostBound any = CostBound.of(graph, unconstrained);
    CostBound bound = cheapest.map(path -> any.above(path, 5)).orElse(any);
    for (int m = 0; m < notes; m++) {
      for (int j = 0; j < graph.grips().get(m).size(); j++) {
        int at = m;
        int grip = j;
        OptionalLong through =
            all.stream()
                .filter(walked -> walked.nodes().get(at) == grip)
                .mapToLong(walked -> ForwardPass.score(walked.path()))
                .min();
        long limit = bound.limits(m)[j];
        if (through.isPresent()) {
          long more = ForwardPass.score(cheapest.orElseThrow()) + 5 - through.getAsLong();
          assertThat(limit - unconstrained.scores(m)[j]).isEqualTo(more);
        } else {
          assertThat(limit == -1 || unconstrained.scores(m)[j] == ForwardPass.UNREACHABLE).isTrue();
        }
      }
    }
  }
}
