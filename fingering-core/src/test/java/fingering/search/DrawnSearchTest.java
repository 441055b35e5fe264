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
 * The search against a walk over every path of a few notes, down to which of equals comes first.
 * Costs, penalties and what is required are drawn by lot.
 */
class DrawnSearchTest {
  private static Optional<Path> first(LayeredGraph layers, Requirement requirement) {
    return EveryPath.through(layers, requirement).stream().map(Walked::path).findFirst();
  }

  @Property(tries = 200)
  void theBestFingeringIsTheFirstOfAll(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 4) int notes) {
    LayeredGraph layers = Drawn.layers(seed, notes);
    assertThat(PathFinder.best(layers, Requirement.NONE))
        .isEqualTo(first(layers, Requirement.NONE));
  }

  @Property(tries = 200)
  void theBestThatShowsWhatIsRequiredIsTheFirstOfAllThatDo(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 4) int notes) {
    LayeredGraph layers = Drawn.layers(seed, notes);
    Requirement requirement = Drawn.requirement(seed);
    assertThat(PathFinder.best(layers, requirement)).isEqualTo(first(layers, requirement));
  }

  @Property(tries = 200)
  void theBestThatShowsTwoThingsAtOnceIsTheFirstOfAllThatDo(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 4) int notes) {
    LayeredGraph layers = Drawn.layers(seed, notes);
    Requirement both =
        AllRequirements.of(
            ImmutableList.of(
                Drawn.requirement(seed), Requirement.NONE, Drawn.requirement(seed + 1L)));
    assertThat(PathFinder.best(layers, both)).isEqualTo(first(layers, both));
  }

  @Property(tries = 200)
  void theBestThatLookDifferentComeInTheOrderOfAll(
      @ForAll int seed,
      @ForAll @IntRange(min = 1, max = 4) int notes,
      @ForAll @IntRange(min = 1, max = 12) int k) {
    LayeredGraph layers = Drawn.layers(seed, notes);
    assertThat(PathFinder.best(layers, Requirement.NONE, k))
        .isEqualTo(DistinctWalk.best(EveryPath.through(layers, Requirement.NONE), k, Seen::of));
  }

  @Property(tries = 200)
  void thoseThatLookDifferentAndShowWhatIsRequiredComeInTheOrderOfAllThatDo(
      @ForAll int seed,
      @ForAll @IntRange(min = 1, max = 4) int notes,
      @ForAll @IntRange(min = 1, max = 12) int k) {
    LayeredGraph layers = Drawn.layers(seed, notes);
    Requirement requirement = Drawn.requirement(seed);
    assertThat(PathFinder.best(layers, requirement, k, VisibleFingering.Grain.PLACES))
        .isEqualTo(DistinctWalk.best(EveryPath.through(layers, requirement), k, Seen::places));
  }

  @Property(tries = 200)
  void whatCostsJustAsMuchAsAllowedIsFoundAndNothingThatCostsMore(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 4) int notes) {
    LayeredGraph layers = Drawn.layers(seed, notes);
    Requirement requirement = Drawn.requirement(seed);
    ForwardPass free = ForwardPass.of(layers, Requirement.NONE);
    Optional<Path> best = first(layers, requirement);
    best.ifPresent(
        path -> {
          Path cheapest = free.best().orElseThrow();
          long more = ForwardPass.sum(path) - ForwardPass.sum(cheapest);
          CostBound bound = CostBound.of(layers, free);
          Automaton automaton = new Automaton(layers, requirement);
          assertThat(BoundedForwardPass.best(layers, automaton, free, bound.above(cheapest, more)))
              .isEqualTo(best);
          assertThat(
                  BoundedForwardPass.best(layers, automaton, free, bound.above(cheapest, more - 1)))
              .isEmpty();
        });
  }

  @Property(tries = 200)
  void aBoundLeavesAGripJustWhatTheBestWayThroughItMayCostMore(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 4) int notes) {
    LayeredGraph layers = Drawn.layers(seed, notes);
    ForwardPass free = ForwardPass.of(layers, Requirement.NONE);
    List<Walked> all = EveryPath.through(layers, Requirement.NONE);
    Optional<Path> cheapest = free.best();
    CostBound any = CostBound.of(layers, free);
    CostBound bound = cheapest.map(path -> any.above(path, 5)).orElse(any);
    for (int m = 0; m < notes; m++) {
      for (int j = 0; j < layers.grips().get(m).size(); j++) {
        int at = m;
        int grip = j;
        OptionalLong through =
            all.stream()
                .filter(walked -> walked.nodes().get(at) == grip)
                .mapToLong(walked -> ForwardPass.sum(walked.path()))
                .min();
        long most = bound.most(m)[j];
        if (through.isPresent()) {
          long more = ForwardPass.sum(cheapest.orElseThrow()) + 5 - through.getAsLong();
          assertThat(most - free.sums(m)[j]).isEqualTo(more);
        } else {
          assertThat(most == -1 || free.sums(m)[j] == ForwardPass.NONE).isTrue();
        }
      }
    }
  }
}
