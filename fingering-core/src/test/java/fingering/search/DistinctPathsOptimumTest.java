package fingering.search;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.music.RandomMusic;
import fingering.tables.Position;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** The best distinct paths against brute force, on random music. */
class DistinctPathsOptimumTest {
  private static final int MOST = 6;

  private static final ImmutableList<String> INSTRUMENTS =
      ImmutableList.of("violin", "viola", "cello", "bass");

  private static final ImmutableList<Integer> LOWEST = ImmutableList.of(55, 48, 36, 28);

  /** Events most of which can be played open, so that many fingerings look the same. */
  private static final ImmutableList<ImmutableList<String>> OPEN =
      ImmutableList.of(
          ImmutableList.of("G3", "D4", "A4", "E5", "B4", "F#5", "D4+A4", "A4+C5"),
          ImmutableList.of("C3", "G3", "D4", "A4", "B3", "E4", "C3+G3", "D4+F4"),
          ImmutableList.of("C2", "G2", "D3", "A3", "E3", "B2", "G2+D3", "D3+F3"),
          ImmutableList.of("E1", "A1", "D2", "G2", "B1", "F2", "A1+D2", "D2+A2"));

  private static Passage openStrings(int seed, int which, int notes) {
    Random random = new Random(seed);
    List<String> events = OPEN.get(which);
    String words =
        IntStream.range(0, notes)
            .mapToObj(
                i ->
                    (random.nextInt(3) == 0 ? "~" : "")
                        + events.get(random.nextInt(events.size()))
                        + (random.nextBoolean() ? "/1" : "/0.25"))
            .collect(Collectors.joining(" "));
    return Music.on(INSTRUMENTS.get(which)).notes(words.startsWith("~") ? "r/1 " + words : words);
  }

  private static Passage line(int seed, int which, int notes) {
    RandomMusic random = new RandomMusic(seed);
    int lowest = LOWEST.get(which);
    Music music = Music.on(INSTRUMENTS.get(which)).tempo(random.tempo());
    return music.notes(random.line(notes, lowest, lowest + 26));
  }

  private static void assertBest(
      LayeredGraph graph, Requirement requirement, int k, Predicate<List<Grip>> wanted) {
    List<Path> found = PathFinder.best(graph, requirement, k);
    List<Path> all = BruteForce.bestOfEachKind(graph, Seen::of, wanted);
    assertThat(found).hasSize(Math.min(k, all.size()));
    assertThat(found).extracting(Seen::of).doesNotHaveDuplicates();
    for (int i = 0; i < found.size(); i++) {
      assertThat(found.get(i).penalty()).isEqualTo(all.get(i).penalty());
      assertThat(found.get(i).cost()).isEqualTo(all.get(i).cost());
      assertThat(wanted.test(found.get(i).grips())).isTrue();
    }
  }

  @Property(tries = 60)
  void noDistinctFingeringOfALineIsCheaperThanThoseFound(
      @ForAll int seed,
      @ForAll @IntRange(min = 0, max = 3) int which,
      @ForAll @IntRange(min = 1, max = 6) int notes,
      @ForAll @IntRange(min = 1, max = 100) int k) {
    LayeredGraph graph = Thinned.graph(line(seed, which, notes), MOST, seed, Thinned.NO_PENALTY);
    assertBest(graph, Requirement.NONE, k, path -> true);
  }

  @Property(tries = 100)
  void openStringsAreNotListedOnceForEachPlaceOfTheHand(
      @ForAll int seed,
      @ForAll @IntRange(min = 0, max = 3) int which,
      @ForAll @IntRange(min = 1, max = 6) int notes,
      @ForAll @IntRange(min = 1, max = 100) int k) {
    LayeredGraph graph =
        Thinned.graph(openStrings(seed, which, notes), MOST, seed, Thinned.NO_PENALTY);
    assertBest(graph, Requirement.NONE, k, path -> true);
  }

  @Property(tries = 80)
  void noFingeringWithOtherStringsOrPositionsIsCheaperThanThoseFound(
      @ForAll int seed,
      @ForAll boolean open,
      @ForAll @IntRange(min = 0, max = 3) int which,
      @ForAll @IntRange(min = 1, max = 6) int notes,
      @ForAll @IntRange(min = 1, max = 60) int k) {
    Passage passage = open ? openStrings(seed, which, notes) : line(seed, which, notes);
    LayeredGraph graph = Thinned.graph(passage, MOST, seed, Thinned.NO_PENALTY);
    List<Path> found = PathFinder.best(graph, Requirement.NONE, k, VisibleFingering.Grain.PLACES);
    List<Path> all = BruteForce.bestOfEachKind(graph, Seen::places, path -> true);
    assertThat(found).hasSize(Math.min(k, all.size()));
    assertThat(found)
        .extracting(path -> path.grips().stream().map(Seen::places).toList())
        .doesNotHaveDuplicates();
    assertThat(found)
        .extracting(Path::cost)
        .isEqualTo(all.stream().limit(k).map(Path::cost).toList());
  }

  @Property(tries = 40)
  void theDistinctFingeringsOfThreeNotesWithAllGripsAreFound(
      @ForAll int seed, @ForAll @IntRange(min = 0, max = 3) int which) {
    LayeredGraph graph = Thinned.all(openStrings(seed, which, 3));
    assertBest(graph, Requirement.NONE, 100, path -> true);
  }

  @Property(tries = 40)
  void doubleStopsAreDistinctIfAnyNoteIs(
      @ForAll int seed,
      @ForAll @IntRange(min = 0, max = 1) int which,
      @ForAll @IntRange(min = 1, max = 5) int notes,
      @ForAll @IntRange(min = 1, max = 50) int k) {
    int lowest = LOWEST.get(which);
    String events = new RandomMusic(seed).withDoubleStops(notes, lowest, lowest + 28);
    Passage passage = Music.on(INSTRUMENTS.get(which)).notes(events);
    LayeredGraph graph = Thinned.graph(passage, MOST, seed, Thinned.NO_PENALTY);
    assertBest(graph, Requirement.NONE, k, path -> true);
  }

  @Property(tries = 30)
  void heldNotesAreCompared(@ForAll @IntRange(min = 0, max = 999) int seed) {
    String low = new RandomMusic(seed).pitch(50, 54).toString();
    Passage passage = Music.viola().notes("%s*4+B3/1 C4/1 D4/1 B3/1 E4/1".formatted(low));
    LayeredGraph graph = Thinned.graph(passage, MOST, seed, Thinned.NO_PENALTY);
    assertBest(graph, Requirement.NONE, 20, path -> true);
  }

  @Property(tries = 60)
  void everyFingeringFoundShowsAStayInThird(
      @ForAll int seed,
      @ForAll boolean open,
      @ForAll @IntRange(min = 0, max = 3) int which,
      @ForAll @IntRange(min = 2, max = 6) int notes,
      @ForAll @IntRange(min = 1, max = 60) int k) {
    Passage passage = open ? openStrings(seed, which, notes) : line(seed, which, notes);
    LayeredGraph graph = Thinned.graph(passage, MOST, seed, Thinned.NO_PENALTY);
    RequiredStays stays = RequiredStays.in(Position.THIRD, 2);
    assertBest(graph, stays, k, path -> BruteForce.stays(path, Position.THIRD, 2));
  }

  @Property(tries = 40)
  void everyFingeringFoundShowsFirstSecondAndThird(
      @ForAll int seed,
      @ForAll @IntRange(min = 3, max = 6) int notes,
      @ForAll @IntRange(min = 1, max = 60) int k) {
    LayeredGraph graph = Thinned.graph(line(seed, 1, notes), MOST, seed, Thinned.NO_PENALTY);
    ImmutableList<Position> all = ImmutableList.of(Position.FIRST, Position.SECOND, Position.THIRD);
    assertBest(
        graph,
        new RequiredStays(all, 1),
        k,
        path -> all.stream().allMatch(position -> BruteForce.stays(path, position, 1)));
  }

  @Property(tries = 60)
  void lowerPenaltyComesBeforeLowerCost(
      @ForAll int seed,
      @ForAll boolean open,
      @ForAll @IntRange(min = 0, max = 3) int which,
      @ForAll @IntRange(min = 1, max = 6) int notes,
      @ForAll @IntRange(min = 1, max = 60) int k) {
    // Unlike that of a brief, this penalty depends on where the hand waits during an open string.
    ToLongFunction<Grip> high = grip -> grip.frame().position().rank() > 2 ? 7 : 0;
    Passage passage = open ? openStrings(seed, which, notes) : line(seed, which, notes);
    LayeredGraph graph = Thinned.graph(passage, MOST, seed, high);
    assertBest(graph, Requirement.NONE, k, path -> true);
  }

  @Property(tries = 40)
  void pathsWithPenaltyAndStayAreInOrder(
      @ForAll int seed,
      @ForAll @IntRange(min = 2, max = 6) int notes,
      @ForAll @IntRange(min = 1, max = 60) int k) {
    ToLongFunction<Grip> high = grip -> grip.frame().position().rank();
    LayeredGraph graph = Thinned.graph(line(seed, 0, notes), MOST, seed, high);
    assertBest(
        graph,
        RequiredStays.in(Position.THIRD, 2),
        k,
        path -> BruteForce.stays(path, Position.THIRD, 2));
  }

  @Property(tries = 60)
  void ofEqualPathsThatLookTheSameTheFirstIsTaken(
      @ForAll int seed,
      @ForAll @IntRange(min = 0, max = 3) int which,
      @ForAll @IntRange(min = 1, max = 5) int notes) {
    LayeredGraph graph =
        Thinned.graph(openStrings(seed, which, notes), MOST, seed, Thinned.NO_PENALTY);
    assertThat(BruteForce.bestOfEachKind(graph, Seen::of, path -> true))
        .containsAll(PathFinder.best(graph, Requirement.NONE, 100));
  }
}
