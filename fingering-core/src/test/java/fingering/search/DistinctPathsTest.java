package fingering.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Taken;
import fingering.music.Moment;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.music.RandomMusic;
import fingering.tables.FingeringException;
import fingering.tables.Position;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DistinctPathsTest {
  private static final Comparator<Path> IN_ORDER =
      Comparator.comparingLong(Path::penalty).thenComparingLong(Path::cost);

  private static Passage viola(int seed, int notes) {
    RandomMusic random = new RandomMusic(seed);
    return Music.viola().tempo(random.tempo()).notes(random.withDoubleStops(notes, 48, 76));
  }

  @ParameterizedTest
  @CsvSource({
    "violin, A4/1 B4/0.5 E5/0.5 ~C5/1 G4/1",
    "viola, C3/1 G3/0.25 D4/0.25 E4/0.5 ~F4/1 D4/1",
    "viola, D4/1 C4+G4/1 D4/1 E4/1",
    "cello, C2/1 G2/1 D3/0.5 E3/0.5 A3/1",
    "bass, E1/1 A1/1 B1/1 D2/1 F2/1"
  })
  void theTenBestCostWhatYenFindsWithoutDuplicateFingerings(String name, String events) {
    LayeredGraph graph = Thinned.all(Music.on(name).notes(events));
    ReferenceGraph jgrapht = ReferenceGraph.of(graph);
    Set<List<String>> seen = new HashSet<>();
    List<Long> costs = new ArrayList<>();
    for (var paths = jgrapht.paths(); costs.size() < 10; ) {
      var path = paths.next();
      if (seen.add(jgrapht.seen(path))) {
        costs.add((long) path.getWeight());
      }
    }
    assertThat(PathFinder.best(graph, Requirement.NONE, 10).stream().map(Path::cost))
        .isEqualTo(costs);
  }

  @Property(tries = 40)
  void theFirstIsTheBestPathGripByGrip(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 30) int notes) {
    LayeredGraph graph = Thinned.all(viola(seed, notes));
    assertThat(PathFinder.best(graph, Requirement.NONE, 3).get(0))
        .isEqualTo(PathFinder.best(graph, Requirement.NONE).orElseThrow());
  }

  @Property(tries = 40)
  void theFirstWithAStayIsTheBestWithAStay(
      @ForAll int seed, @ForAll @IntRange(min = 4, max = 30) int notes) {
    LayeredGraph graph = Thinned.all(viola(seed, notes));
    RequiredStays stays = RequiredStays.in(Position.THIRD, 3);
    assertThat(PathFinder.best(graph, stays, 4).stream().findFirst())
        .isEqualTo(PathFinder.best(graph, stays));
  }

  @Property(tries = 40)
  void oneBestPathIsTheBestPath(@ForAll int seed, @ForAll @IntRange(min = 1, max = 30) int notes) {
    LayeredGraph graph = Thinned.all(viola(seed, notes));
    assertThat(PathFinder.best(graph, Requirement.NONE, 1))
        .containsExactly(PathFinder.best(graph, Requirement.NONE).orElseThrow());
  }

  @Property(tries = 40)
  void theyAreInOrderAndNoTwoLookTheSame(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 30) int notes) {
    LayeredGraph graph =
        Thinned.graph(viola(seed, notes), 30, seed, grip -> grip.frame().index() / 5);
    List<Path> found = PathFinder.best(graph, Requirement.NONE, 30);
    assertThat(found).isSortedAccordingTo(IN_ORDER);
    assertThat(found).extracting(Seen::of).doesNotHaveDuplicates();
  }

  @Property(tries = 40)
  void fewerPathsAreTheFirstOfMore(
      @ForAll int seed,
      @ForAll @IntRange(min = 1, max = 20) int notes,
      @ForAll @IntRange(min = 1, max = 20) int k) {
    LayeredGraph graph = Thinned.all(viola(seed, notes));
    List<Path> more = PathFinder.best(graph, Requirement.NONE, 20);
    assertThat(PathFinder.best(graph, Requirement.NONE, k))
        .isEqualTo(more.subList(0, Math.min(k, more.size())));
  }

  @Test
  void anOpenStringIsOneFingeringWhereverTheHandWaits() {
    LayeredGraph graph = Thinned.all(Music.viola().notes("C3/1 C3/1 C3/1"));
    assertThat(graph.grips().get(0)).hasSizeGreaterThan(10);
    assertThat(PathFinder.best(graph, Requirement.NONE, 10)).hasSize(1);
  }

  @Test
  void aSecondFingerLooksTheSameInTheClosedHandAndInTheHandExtendedBack() {
    Taken cello = Taken.on("cello");
    List<VisibleFingering> seen =
        cello.all("F3", 2, "2", "1st").stream().map(Grip::of).map(VisibleFingering::of).toList();
    assertThat(seen).hasSizeGreaterThan(1);
    assertThat(seen.stream().distinct()).hasSize(1);
  }

  @Test
  void oneFingerInTwoPositionsLooksDifferent() {
    Taken viola = Taken.on("viola");
    assertThat(VisibleFingering.of(viola.by("A4", 2, "4", "half")))
        .isNotEqualTo(VisibleFingering.of(viola.by("A4", 2, "4", "1st")));
  }

  @Test
  void thereIsNoPathIfNoFingeringShowsTheStay() {
    LayeredGraph graph = Thinned.all(Music.viola().notes("C3/1 G3/1"));
    assertThat(PathFinder.best(graph, RequiredStays.in(Position.THIRD, 2), 5)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 0, 101})
  void fewerThanOnePathAndMoreThanAHundredAreRefused(int k) {
    LayeredGraph graph = Thinned.all(Music.viola().notes("C3/1 G3/1"));
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> PathFinder.best(graph, Requirement.NONE, k))
        .withMessageContaining(Integer.toString(k))
        .withMessageContaining("1 to 100");
  }

  /** The same music many times in succession. */
  private static LayeredGraph repeated(LayeredGraph graph, int times) {
    ImmutableList.Builder<Moment> moments = ImmutableList.builder();
    ImmutableList.Builder<ImmutableList<Grip>> grips = ImmutableList.builder();
    Moment last = graph.moments().get(graph.moments().size() - 1);
    long length = last.startMicros() + last.soundMicros();
    for (int i = 0; i < times; i++) {
      for (Moment moment : graph.moments()) {
        moments.add(
            new Moment(
                moment.starting(),
                moment.held(),
                moment.startMicros() + i * length,
                moment.soundMicros(),
                moment.restMicros(),
                moment.slurred(),
                moment.grace(),
                moment.pizzicato()));
      }
      grips.addAll(graph.grips());
    }
    return new LayeredGraph(moments.build(), grips.build(), graph.scoring(), graph.penalty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "C3/0.25 G3/0.25 D4/0.25 A4/0.25 D4/0.25 G3/0.25 C3/0.25 G3/0.25",
        "D5/0.25 D5/0.25 D5/0.25 D5/0.25 D5/0.25 D5/0.25 D5/0.25 D5/0.25"
      })
  void theFiveBestOfTenThousandMomentsAreFoundThoughManyCostTheSame(String events) {
    LayeredGraph graph = repeated(Thinned.all(Music.viola().notes(events)), 1_250);
    List<Path> found = PathFinder.best(graph, Requirement.NONE, 5);
    assertThat(graph.moments()).hasSize(10_000);
    assertThat(found).hasSize(5).isSortedAccordingTo(IN_ORDER);
    assertThat(found).extracting(Seen::of).doesNotHaveDuplicates();
  }
}
