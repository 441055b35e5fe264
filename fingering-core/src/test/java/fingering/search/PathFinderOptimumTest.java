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

/** The search against a walk over every path, on random music. */
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
      LayeredGraph layers, Requirement requirement, Predicate<List<Grip>> wanted) {
    var found = PathFinder.best(layers, requirement);
    var brute = BruteForce.best(layers, wanted);
    assertThat(found.isPresent()).isEqualTo(brute.isPresent());
    found.ifPresent(
        path -> {
          assertThat(path.penalty()).isEqualTo(brute.orElseThrow().penalty());
          assertThat(path.cost()).isEqualTo(brute.orElseThrow().cost());
          assertThat(wanted.test(path.grips())).isTrue();
        });
  }

  @Property(tries = 60)
  void onTheViolinNoFingeringIsCheaperThanTheOneFound(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 7) int notes) {
    LayeredGraph layers = Thinned.layers(violin(seed, notes), MOST, seed, Thinned.NO_PENALTY);
    assertThat(PathFinder.best(layers, Requirement.NONE))
        .isEqualTo(BruteForce.best(layers, path -> true));
  }

  @Property(tries = 60)
  void onTheViolaNoFingeringIsCheaperThanTheOneFound(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 7) int notes) {
    LayeredGraph layers = Thinned.layers(viola(seed, notes), MOST, seed, Thinned.NO_PENALTY);
    assertThat(PathFinder.best(layers, Requirement.NONE))
        .isEqualTo(BruteForce.best(layers, path -> true));
  }

  @Property(tries = 40)
  void doubleStopsAreFingeredAsCheaplyAsCanBe(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 6) int notes) {
    RandomMusic random = new RandomMusic(seed);
    Passage passage = Music.viola().notes(random.withDoubleStops(notes, 48, 76));
    LayeredGraph layers = Thinned.layers(passage, MOST, seed, Thinned.NO_PENALTY);
    assertBest(layers, Requirement.NONE, path -> true);
  }

  @Property(tries = 40)
  void heldNotesCloseTheSameWaysForBoth(@ForAll @IntRange(min = 0, max = 999) int seed) {
    String low = new RandomMusic(seed).pitch(50, 54).toString();
    String events = "%s*4+B3/1 C4/1 D4/1 B3/1 ".formatted(low);
    LayeredGraph layers =
        Thinned.layers(Music.viola().notes(events + "E4/1"), MOST, seed, Thinned.NO_PENALTY);
    assertBest(layers, Requirement.NONE, path -> true);
  }

  @Property(tries = 60)
  void aStayOfTwoNotesInThirdIsShownAtTheLeastCost(
      @ForAll int seed, @ForAll @IntRange(min = 2, max = 7) int notes) {
    LayeredGraph layers = Thinned.layers(violin(seed, notes), MOST, seed, Thinned.NO_PENALTY);
    assertBest(
        layers,
        RequiredStays.in(Position.THIRD, 2),
        path -> BruteForce.stays(path, Position.THIRD, 2));
  }

  @Property(tries = 60)
  void firstSecondAndThirdAreAllShownAtTheLeastCost(
      @ForAll int seed, @ForAll @IntRange(min = 3, max = 7) int notes) {
    LayeredGraph layers = Thinned.layers(viola(seed, notes), MOST, seed, Thinned.NO_PENALTY);
    ImmutableList<Position> all = ImmutableList.of(Position.FIRST, Position.SECOND, Position.THIRD);
    assertBest(
        layers,
        new RequiredStays(all, 1),
        path -> all.stream().allMatch(position -> BruteForce.stays(path, position, 1)));
  }

  @Property(tries = 60)
  void theLeastPenaltyComesBeforeTheLeastCost(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 7) int notes) {
    ToLongFunction<Grip> high = grip -> grip.frame().position().rank() > 2 ? 7 : 0;
    LayeredGraph layers = Thinned.layers(viola(seed, notes), MOST, seed, high);
    assertThat(PathFinder.best(layers, Requirement.NONE))
        .isEqualTo(BruteForce.best(layers, path -> true));
  }

  @Property(tries = 40)
  void closedGripsAreTakenNoMoreThanIfTheyWereNotThere(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 7) int notes) {
    LayeredGraph layers = Thinned.layers(viola(seed, notes), MOST, seed, Thinned.NO_PENALTY);
    Predicate<Grip> wanted = grip -> grip.top().string() % 2 == 0 || grip.open();
    LayeredGraph closing =
        layers.closing((m, grip) -> !wanted.test(layers.grips().get(m).get(grip)));
    assertBest(closing, Requirement.NONE, path -> path.stream().allMatch(wanted));
    assertBest(
        closing,
        RequiredStays.in(Position.FIRST, 2),
        path -> path.stream().allMatch(wanted) && BruteForce.stays(path, Position.FIRST, 2));
  }

  @Property(tries = 40)
  void penaltyAndStayTogetherAreStillTheBest(
      @ForAll int seed, @ForAll @IntRange(min = 2, max = 7) int notes) {
    ToLongFunction<Grip> high = grip -> grip.frame().position().rank();
    LayeredGraph layers = Thinned.layers(violin(seed, notes), MOST, seed, high);
    assertBest(
        layers,
        RequiredStays.in(Position.THIRD, 2),
        path -> BruteForce.stays(path, Position.THIRD, 2));
  }
}
