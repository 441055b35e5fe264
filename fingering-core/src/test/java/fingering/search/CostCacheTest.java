package fingering.search;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableLongArray;
import fingering.fingerboard.Fingerboard;
import fingering.fingerboard.Grip;
import fingering.fingerboard.GripFinder;
import fingering.music.Moment;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.music.RandomMusic;
import fingering.scoring.EveryRule;
import fingering.scoring.NoteContext;
import fingering.scoring.Scoring;
import fingering.scoring.TimedTransition;
import fingering.scoring.Weights;
import fingering.scoring.rules.StandardRules;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Cached costs, against the same costs computed by the rules. */
class CostCacheTest {
  /** Without a habit, the costs of grips are cached once, whatever the line around. */
  private final Scoring advanced =
      Scoring.of(StandardRules.all(), new Weights(Weights.preset("advanced").points()));

  @Property(tries = 25)
  void aCachedCostIsTheCostByTheRulesInMusicThatRepeats(
      @ForAll int seed, @ForAll @IntRange(min = 2, max = 12) int notes) {
    for (Scoring scoring : List.of(advanced, EveryRule.scoring())) {
      assertCachedCostsAreThoseOfTheRules(scoring, seed, notes);
    }
  }

  private static void assertCachedCostsAreThoseOfTheRules(Scoring scoring, int seed, int notes) {
    RandomMusic random = new RandomMusic(seed);
    CostCache costs = new CostCache(scoring);
    String once = random.withDoubleStops(notes, 48, 76);
    Passage viola = Music.viola().tempo(random.tempo()).notes(once + " " + once + " ~C4/1 D4/3tr");
    GripFinder finder = new GripFinder(Fingerboard.of(viola.instrument()));
    ImmutableList<Moment> moments = Moment.withSurroundings(viola.moments());
    for (int m = 1; m < moments.size(); m++) {
      ImmutableList<Grip> before = finder.grips(moments.get(m - 1));
      ImmutableList<Grip> now = finder.grips(moments.get(m));
      TimedTransition transition = TimedTransition.between(moments.get(m - 1), moments.get(m));
      NoteContext note = NoteContext.of(moments.get(m));
      NodeCosts nodes = costs.of(note, costs.number(now), now);
      EdgeCosts edges = costs.of(transition, costs.number(before), costs.number(now), before, now);
      long[] scores = new long[now.size()];
      Arrays.fill(scores, 100);
      nodes.addTo(scores);
      ImmutableLongArray byRules = scoring.costs(note, now);
      for (int j = 0; j < now.size(); j++) {
        assertThat(scores[j]).isEqualTo(100 + byRules.get(j));
        assertThat(nodes.cost(j)).isEqualTo(byRules.get(j));
        for (int i = 0; i < before.size(); i++) {
          assertThat(edges.cost(i, j))
              .isEqualTo(scoring.cost(transition, before.get(i), now.get(j)));
        }
      }
    }
  }

  @Test
  void oneNoteInTwoLinesIsCachedTwiceOnlyIfAHabitSeesTheLine() {
    Passage twoLines = Music.viola().notes("E4/1 E4/1 G4/1 E4/1");
    ImmutableList<Grip> grips = Thinned.all(twoLines).grips().get(1);
    NoteContext first = NoteContext.of(twoLines.moments().get(1));
    NoteContext last = NoteContext.of(twoLines.moments().get(3));
    assertThat(first.line()).isNotEqualTo(last.line());
    CostCache plain = new CostCache(advanced);
    assertThat(plain.of(first, plain.number(grips), grips))
        .isSameAs(plain.of(last, plain.number(grips), grips));
    CostCache compared = new CostCache(EveryRule.scoring());
    NodeCosts inFirst = compared.of(first, compared.number(grips), grips);
    assertThat(compared.of(first, compared.number(grips), grips)).isSameAs(inFirst);
    assertThat(compared.of(last, compared.number(grips), grips)).isNotSameAs(inFirst);
  }

  /** Four notes of one pitch with different articulations, and all its grips. */
  private static final Passage STRUCK = Music.viola().notes("E4/1 E4/1! E4/1pz ~E4/1");

  private static final ImmutableList<Grip> E4 = Thinned.all(STRUCK).grips().get(0);

  private static NodeCosts nodes(CostCache costs, int m) {
    return costs.of(NoteContext.of(STRUCK.moments().get(m)), costs.number(E4), E4);
  }

  /** The edges from some grips of the first note to some of the second. */
  private static EdgeCosts edges(
      CostCache costs, ImmutableList<Grip> before, ImmutableList<Grip> now) {
    TimedTransition transition =
        TimedTransition.between(STRUCK.moments().get(0), STRUCK.moments().get(1));
    return costs.of(transition, costs.number(before), costs.number(now), before, now);
  }

  @Test
  void costsWithinTheCapacityAreComputedOnce() {
    CostCache costs = new CostCache(advanced, 4L * E4.size());
    NodeCosts plain = nodes(costs, 0);
    NodeCosts accented = nodes(costs, 1);
    assertThat(nodes(costs, 0)).isSameAs(plain).isNotSameAs(accented);
    assertThat(nodes(costs, 1)).isSameAs(accented);
  }

  @Test
  void aFullCacheIsEmptied() {
    CostCache costs = new CostCache(advanced, 4L * E4.size());
    NodeCosts plain = nodes(costs, 0);
    NodeCosts accented = nodes(costs, 1);
    NodeCosts plucked = nodes(costs, 2);
    NodeCosts slurred = nodes(costs, 3);
    assertThat(nodes(costs, 2)).isSameAs(plucked);
    assertThat(nodes(costs, 3)).isSameAs(slurred);
    assertThat(nodes(costs, 1)).isNotSameAs(accented);
    assertThat(nodes(costs, 0)).isNotSameAs(plain);
  }

  @Test
  void edgesCountWithTheOverheadOfTheirTable() {
    ImmutableList<Grip> ten = E4.subList(0, 10);
    ImmutableList<Grip> eleven = E4.subList(0, 11);
    // Two tables without the time, and one with it; the cost of a grip takes twice the room.
    long capacity = 2L * E4.size() + 3L * (10 * 11 + 32);
    CostCache enough = new CostCache(advanced, capacity);
    NodeCosts cached = nodes(enough, 0);
    EdgeCosts edges = edges(enough, ten, eleven);
    assertThat(nodes(enough, 0)).isSameAs(cached);
    assertThat(edges(enough, ten, eleven)).isSameAs(edges);
    CostCache smaller = new CostCache(advanced, capacity - 1);
    NodeCosts dropped = nodes(smaller, 0);
    edges(smaller, ten, eleven);
    assertThat(nodes(smaller, 0)).isNotSameAs(dropped);
  }

  @Test
  void missingTimeOnUpToAHundredEdgesIsNotCached() {
    ImmutableList<Grip> ten = E4.subList(0, 10);
    CostCache costs = new CostCache(advanced, 2L * E4.size() + 2L * (10 * 10 + 32));
    NodeCosts cached = nodes(costs, 0);
    EdgeCosts edges = edges(costs, ten, ten);
    assertThat(edges(costs, ten, ten)).isNotSameAs(edges);
    assertThat(nodes(costs, 0)).isSameAs(cached);
  }

  @Test
  void edgesComputedAgainCountAgain() {
    ImmutableList<Grip> ten = E4.subList(0, 10);
    CostCache costs = new CostCache(advanced, 2L * E4.size() + 2L * (10 * 10 + 32));
    edges(costs, ten, ten);
    nodes(costs, 0);
    NodeCosts accented = nodes(costs, 1);
    edges(costs, ten, ten);
    assertThat(nodes(costs, 1)).isSameAs(accented);
    nodes(costs, 2);
    assertThat(nodes(costs, 1)).isNotSameAs(accented);
  }

  @Test
  void costsComputedAgainAreTheSame() {
    CostCache empty = new CostCache(advanced, 0);
    TimedTransition transition =
        TimedTransition.between(STRUCK.moments().get(0), STRUCK.moments().get(1));
    EdgeCosts edges = edges(empty, E4, E4);
    assertThat(edges(empty, E4, E4)).isSameAs(edges);
    nodes(empty, 0);
    EdgeCosts again = edges(empty, E4, E4);
    assertThat(again).isNotSameAs(edges);
    for (int i = 0; i < E4.size(); i++) {
      for (int j = 0; j < E4.size(); j++) {
        assertThat(again.cost(i, j)).isEqualTo(advanced.cost(transition, E4.get(i), E4.get(j)));
      }
    }
  }
}
