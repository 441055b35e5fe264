package fingering.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import com.google.common.collect.ImmutableList;
import fingering.demand.AllRequirements;
import fingering.demand.OwnLimit;
import fingering.demand.OwnSkill;
import fingering.demand.ShowPosition;
import fingering.demand.ShowShift;
import fingering.demand.ShowStay;
import fingering.demand.ShowTechnique;
import fingering.demand.Technique;
import fingering.fingerboard.Finger;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Music;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.music.RandomMusic;
import fingering.player.ShiftKind;
import fingering.tables.Position;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Required skills, against brute force that counts them independently. */
class SkillsOptimumTest {
  private static final int MOST = 6;

  private static Passage line(int seed, int notes) {
    RandomMusic random = new RandomMusic(seed);
    return Music.viola().meter(2, 4).notes(random.line(notes, 48, 76)); // C3 to E5
  }

  private static void assertBest(
      Passage passage, int seed, Requirement requirement, Predicate<List<Grip>> wanted) {
    LayeredGraph graph = Thinned.graph(passage, MOST, seed, Thinned.NO_PENALTY);
    var found = PathFinder.best(graph, requirement);
    var brute = BruteForce.best(graph, wanted);
    assertThat(found.isPresent()).isEqualTo(brute.isPresent());
    found.ifPresent(
        path -> {
          assertThat(path.cost()).isEqualTo(brute.orElseThrow().cost());
          assertThat(wanted.test(path.grips())).isTrue();
        });
  }

  private static long stoppedIn(List<Grip> path, Position position) {
    return path.stream()
        .flatMap(grip -> grip.placements().stream())
        .filter(p -> p.finger() != Finger.OPEN && p.frame().position().equals(position))
        .count();
  }

  private static boolean fourth(List<Grip> path) {
    return path.stream()
        .flatMap(grip -> grip.placements().stream())
        .anyMatch(p -> p.finger().symbol().equals("4"));
  }

  /** The longest run of whole measures in a position, measure by measure. */
  private static int measuresIn(Passage passage, List<Grip> path, Position position) {
    Map<Integer, Boolean> stayed = new TreeMap<>();
    Map<Integer, Boolean> stopped = new TreeMap<>();
    for (int m = 0; m < path.size(); m++) {
      int measure = passage.moments().get(m).place().measureIndex();
      Placement only = path.get(m).placements().get(0);
      stayed.merge(measure, path.get(m).frame().position().equals(position), Boolean::logicalAnd);
      stopped.merge(measure, only.finger() != Finger.OPEN, Boolean::logicalOr);
    }
    int run = 0;
    int longest = 0;
    for (int measure : stayed.keySet()) {
      run = stayed.get(measure) && stopped.get(measure) ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
    return longest;
  }

  @Property(tries = 60)
  void aNumberOfNotesInThirdIsShownAtTheLowestCost(
      @ForAll int seed,
      @ForAll @IntRange(min = 1, max = 7) int notes,
      @ForAll @IntRange(min = 1, max = 4) int wanted) {
    Passage passage = line(seed, notes);
    assertBest(
        passage,
        seed,
        new ShowPosition(Position.THIRD, wanted).requirement(passage),
        path -> stoppedIn(path, Position.THIRD) >= wanted);
  }

  @Property(tries = 60)
  void aStayOfWholeMeasuresIsShownAtTheLowestCost(
      @ForAll int seed,
      @ForAll @IntRange(min = 1, max = 7) int notes,
      @ForAll @IntRange(min = 1, max = 2) int measures) {
    Passage passage = line(seed, notes);
    assertBest(
        passage,
        seed,
        new ShowStay(Position.FIRST, measures).requirement(passage),
        path -> measuresIn(passage, path, Position.FIRST) >= measures);
  }

  @Property(tries = 60)
  void severalSkillsAreShownAtTheLowestCost(
      @ForAll int seed, @ForAll @IntRange(min = 2, max = 7) int notes) {
    Passage passage = line(seed, notes);
    assertBest(
        passage,
        seed,
        AllRequirements.of(
            ImmutableList.of(
                new ShowPosition(Position.FIRST, 1).requirement(passage),
                new ShowTechnique(Technique.FOURTH_FINGER).requirement(passage),
                new ShowPosition(Position.THIRD, 1).requirement(passage))),
        path ->
            stoppedIn(path, Position.FIRST) >= 1
                && stoppedIn(path, Position.THIRD) >= 1
                && fourth(path));
  }

  /** The same pitch with another spelling under the same finger, which is no shift. */
  private static boolean respelled(Passage passage, int m) {
    Note before = passage.moments().get(m - 1).starting().get(0);
    Note now = passage.moments().get(m).starting().get(0);
    return before.midi() == now.midi() && !before.sounding().equals(now.sounding());
  }

  /** Upward shifts with one finger on one string, without a rest or an open string between. */
  private static int guidedUp(Passage passage, List<Grip> path) {
    int shifts = 0;
    for (int m = 1; m < path.size(); m++) {
      Placement left = path.get(m - 1).placements().get(0);
      Placement reached = path.get(m).placements().get(0);
      boolean up = path.get(m).frame().first() > path.get(m - 1).frame().first();
      boolean guided =
          left.finger() != Finger.OPEN
              && left.finger() == reached.finger()
              && left.string() == reached.string()
              && !respelled(passage, m)
              && passage.moments().get(m).restMicros() == 0;
      shifts += up && guided ? 1 : 0;
    }
    return shifts;
  }

  @Property(tries = 300)
  void shiftsOfAKindAreShownAtTheLowestCost(
      @ForAll int seed,
      @ForAll @IntRange(min = 2, max = 7) int notes,
      @ForAll @IntRange(min = 1, max = 2) int times) {
    Passage passage = line(seed, notes);
    assertBest(
        passage,
        seed,
        new ShowShift(
                Optional.of(ShowShift.Direction.UP), Optional.of(ShiftKind.SAME_FINGER), times)
            .requirement(passage),
        path -> guidedUp(passage, path) >= times);
  }

  private static boolean stoppedLong(Passage passage, int m, Grip grip) {
    return passage.moments().get(m).soundMicros() >= 500_000 && !grip.open();
  }

  @Property(tries = 100)
  void aSkillOfOnesOwnIsShownAtTheLowestCost(
      @ForAll int seed,
      @ForAll @IntRange(min = 1, max = 7) int notes,
      @ForAll @IntRange(min = 1, max = 3) int wanted) {
    Passage passage = line(seed, notes);
    assertBest(
        passage,
        seed,
        OwnSkill.of(
                "stop long notes",
                wanted,
                (moment, grip) -> moment.soundMicros() >= 500_000 && !grip.open())
            .requirement(passage),
        path ->
            IntStream.range(0, path.size())
                    .filter(m -> stoppedLong(passage, m, path.get(m)))
                    .count()
                >= wanted);
  }

  @Property(tries = 100)
  void aLimitOfOnesOwnIsKeptAtTheLowestCost(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 7) int notes) {
    Passage passage = line(seed, notes);
    OwnLimit limit =
        OwnLimit.of(
            "keep the first finger off string I",
            (moment, grip) ->
                grip.placements().stream()
                    .noneMatch(p -> p.string() == 1 && p.finger() == Finger.FIRST));
    LayeredGraph graph = Thinned.graph(passage, MOST, seed, Thinned.NO_PENALTY);
    Predicate<List<Grip>> kept =
        path ->
            path.stream()
                .flatMap(grip -> grip.placements().stream())
                .noneMatch(p -> p.string() == 1 && p.finger().symbol().equals("1"));
    var brute = BruteForce.best(graph, kept);
    assumeThat(brute).isPresent();
    LayeredGraph limited =
        graph.excluding(
            (m, grip) -> !limit.allows(passage.moments().get(m), graph.grips().get(m).get(grip)));
    var found = PathFinder.best(limited, Requirement.NONE).orElseThrow();
    assertThat(found.cost()).isEqualTo(brute.orElseThrow().cost());
    assertThat(kept.test(found.grips())).isTrue();
  }
}
