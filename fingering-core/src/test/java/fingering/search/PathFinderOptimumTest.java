package fingering.search;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.music.RandomMusic;
import fingering.tables.Position;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToLongFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** The search against brute force, on random music. */
class PathFinderOptimumTest {
  private static final int MOST = 7;

  private static Passage violin(int seed, int notes) {
    RandomMusic random = new RandomMusic(seed);
    return Music.violin().tempo(random.tempo()).notes(random.line(notes, 55, 83)); // G3 to B5
  }

  private static Passage viola(int seed, int notes) {
    RandomMusic random = new RandomMusic(seed);
    return Music.viola().tempo(random.tempo()).notes(random.line(notes, 48, 76)); // C3 to E5
  }

  private static void assertBest(
      LayeredGraph graph, Requirement requirement, Predicate<List<Grip>> wanted) {
    var found = PathFinder.best(graph, requirement);
    var brute = BruteForce.best(graph, wanted);
    assertThat(found.isPresent()).isEqualTo(brute.isPresent());
    found.ifPresent(
        path -> {
          assertThat(path.penalty()).isEqualTo(brute.orElseThrow().penalty());
          assertThat(path.cost()).isEqualTo(brute.orElseThrow().cost());
          assertThat(wanted.test(path.grips())).isTrue();
        });
  }

  @Property(tries = 60)
  void noFingeringForViolinIsCheaperThanTheOneFound(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 7) int notes) {
    LayeredGraph graph = Thinned.graph(violin(seed, notes), MOST, seed, Thinned.NO_PENALTY);
    assertThat(PathFinder.best(graph, Requirement.NONE))
        .isEqualTo(BruteForce.best(graph, path -> true));
  }

  @Property(tries = 60)
  void noFingeringForViolaIsCheaperThanTheOneFound(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 7) int notes) {
    LayeredGraph graph = Thinned.graph(viola(seed, notes), MOST, seed, Thinned.NO_PENALTY);
    assertThat(PathFinder.best(graph, Requirement.NONE))
        .isEqualTo(BruteForce.best(graph, path -> true));
  }

  @Property(tries = 40)
  void noFingeringOfDoubleStopsIsCheaperThanTheOneFound(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 6) int notes) {
    RandomMusic random = new RandomMusic(seed);
    Passage passage = Music.viola().notes(random.withDoubleStops(notes, 48, 76));
    LayeredGraph graph = Thinned.graph(passage, MOST, seed, Thinned.NO_PENALTY);
    assertBest(graph, Requirement.NONE, path -> true);
  }

  @Property(tries = 40)
  void noFingeringOfHeldNotesIsCheaperThanTheOneFound(
      @ForAll @IntRange(min = 0, max = 999) int seed) {
    String low = new RandomMusic(seed).pitch(50, 54).toString();
    String events = "%s*4+B3/1 C4/1 D4/1 B3/1 ".formatted(low);
    LayeredGraph graph =
        Thinned.graph(Music.viola().notes(events + "E4/1"), MOST, seed, Thinned.NO_PENALTY);
    assertBest(graph, Requirement.NONE, path -> true);
  }

  @Property(tries = 60)
  void aStayOfTwoNotesInThirdIsShownAtTheLowestCost(
      @ForAll int seed, @ForAll @IntRange(min = 2, max = 7) int notes) {
    LayeredGraph graph = Thinned.graph(violin(seed, notes), MOST, seed, Thinned.NO_PENALTY);
    assertBest(
        graph,
        RequiredStays.in(Position.THIRD, 2),
        path -> BruteForce.stays(path, Position.THIRD, 2));
  }

  @Property(tries = 60)
  void firstSecondAndThirdAreAllShownAtTheLowestCost(
      @ForAll int seed, @ForAll @IntRange(min = 3, max = 7) int notes) {
    LayeredGraph graph = Thinned.graph(viola(seed, notes), MOST, seed, Thinned.NO_PENALTY);
    ImmutableList<Position> all = ImmutableList.of(Position.FIRST, Position.SECOND, Position.THIRD);
    assertBest(
        graph,
        new RequiredStays(all, 1),
        path -> all.stream().allMatch(position -> BruteForce.stays(path, position, 1)));
  }

  @Property(tries = 60)
  void theLowestPenaltyComesBeforeTheLowestCost(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 7) int notes) {
    ToLongFunction<Grip> high = grip -> grip.frame().position().rank() > 2 ? 7 : 0;
    LayeredGraph graph = Thinned.graph(viola(seed, notes), MOST, seed, high);
    assertThat(PathFinder.best(graph, Requirement.NONE))
        .isEqualTo(BruteForce.best(graph, path -> true));
  }

  @Property(tries = 40)
  void closedGripsAreTreatedAsIfTheyDidNotExist(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 7) int notes) {
    LayeredGraph graph = Thinned.graph(viola(seed, notes), MOST, seed, Thinned.NO_PENALTY);
    Predicate<Grip> wanted = grip -> grip.top().string() % 2 == 0 || grip.open();
    LayeredGraph closing =
        graph.excluding((m, grip) -> !wanted.test(graph.grips().get(m).get(grip)));
    assertBest(closing, Requirement.NONE, path -> path.stream().allMatch(wanted));
    assertBest(
        closing,
        RequiredStays.in(Position.FIRST, 2),
        path -> path.stream().allMatch(wanted) && BruteForce.stays(path, Position.FIRST, 2));
  }

  @Property(tries = 40)
  void theBestPathIsFoundWithPenaltyAndStay(
      @ForAll int seed, @ForAll @IntRange(min = 2, max = 7) int notes) {
    ToLongFunction<Grip> high = grip -> grip.frame().position().rank();
    LayeredGraph graph = Thinned.graph(violin(seed, notes), MOST, seed, high);
    assertBest(
        graph,
        RequiredStays.in(Position.THIRD, 2),
        path -> BruteForce.stays(path, Position.THIRD, 2));
  }
}
