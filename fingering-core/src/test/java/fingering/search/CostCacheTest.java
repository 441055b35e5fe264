package fingering.search;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Fingerboard;
import fingering.fingerboard.Grip;
import fingering.fingerboard.GripFinder;
import fingering.music.Moment;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.music.RandomMusic;
import fingering.scoring.NoteContext;
import fingering.scoring.Scoring;
import fingering.scoring.Transition;
import fingering.scoring.Weights;
import fingering.scoring.rules.StandardRules;
import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Costs that are kept against the same costs reckoned anew by the rules. */
class CostCacheTest {
  private final Scoring professional =
      Scoring.of(StandardRules.all(), Weights.preset("professional"));

  @Property(tries = 25)
  void aCostKeptIsTheCostByTheRulesInMusicThatComesBack(
      @ForAll int seed, @ForAll @IntRange(min = 2, max = 12) int notes) {
    RandomMusic random = new RandomMusic(seed);
    CostCache costs = new CostCache(professional);
    String once = random.withDoubleStops(notes, 48, 76);
    Passage viola = Music.viola().tempo(random.tempo()).notes(once + " " + once + " ~C4/1 D4/3tr");
    GripFinder finder = new GripFinder(Fingerboard.of(viola.instrument()));
    ImmutableList<Moment> moments = Moment.paced(viola.moments());
    for (int m = 1; m < moments.size(); m++) {
      ImmutableList<Grip> before = finder.grips(moments.get(m - 1));
      ImmutableList<Grip> now = finder.grips(moments.get(m));
      Transition passing = Transition.between(moments.get(m - 1), moments.get(m));
      NoteContext stroke = NoteContext.of(moments.get(m));
      NodeCosts nodes = costs.of(stroke, costs.number(now), now);
      EdgeCostView ways = costs.of(passing, costs.number(before), costs.number(now), before, now);
      long[] sums = new long[now.size()];
      Arrays.fill(sums, 100);
      nodes.addTo(sums, stroke.singing());
      for (int j = 0; j < now.size(); j++) {
        assertThat(sums[j]).isEqualTo(100 + nodes.cost(j, stroke.singing()));
        assertThat(nodes.cost(j, stroke.singing()))
            .isEqualTo(professional.cost(stroke, now.get(j)));
        for (int i = 0; i < before.size(); i++) {
          assertThat(ways.cost(i, j))
              .isEqualTo(professional.cost(passing, before.get(i), now.get(j)));
        }
      }
    }
  }

  /** Four notes of one pitch, each struck in its own way, and all its grips. */
  private static final Passage STRUCK = Music.viola().notes("E4/1 E4/1! E4/1pz ~E4/1");

  private static final ImmutableList<Grip> E4 = Thinned.all(STRUCK).grips().get(0);

  private static NodeCosts struck(CostCache costs, int m) {
    return costs.of(NoteContext.of(STRUCK.moments().get(m)), costs.number(E4), E4);
  }

  /** The ways from some grips of the first note to some of the second. */
  private static EdgeCosts edges(
      CostCache costs, ImmutableList<Grip> before, ImmutableList<Grip> now) {
    Transition passing = Transition.between(STRUCK.moments().get(0), STRUCK.moments().get(1));
    return costs.of(passing, costs.number(before), costs.number(now), before, now).costs();
  }

  @Test
  void whatMayBeKeptIsReckonedOnce() {
    CostCache costs = new CostCache(professional, 2L * E4.size());
    NodeCosts plain = struck(costs, 0);
    NodeCosts accented = struck(costs, 1);
    assertThat(struck(costs, 0)).isSameAs(plain).isNotSameAs(accented);
    assertThat(struck(costs, 1)).isSameAs(accented);
  }

  @Test
  void whereMoreIsKeptThanMayBeAllButTheLastIsForgotten() {
    CostCache costs = new CostCache(professional, 2L * E4.size());
    NodeCosts plain = struck(costs, 0);
    NodeCosts accented = struck(costs, 1);
    NodeCosts plucked = struck(costs, 2);
    NodeCosts slurred = struck(costs, 3);
    assertThat(struck(costs, 2)).isSameAs(plucked);
    assertThat(struck(costs, 3)).isSameAs(slurred);
    assertThat(struck(costs, 1)).isNotSameAs(accented);
    assertThat(struck(costs, 0)).isNotSameAs(plain);
  }

  @Test
  void waysTakeAsMuchRoomAsThereAreOfThemAndATableBesides() {
    ImmutableList<Grip> ten = E4.subList(0, 10);
    ImmutableList<Grip> eleven = E4.subList(0, 11);
    // Three tables whatever the time, and one with it.
    long room = E4.size() + 4L * (10 * 11 + 32);
    CostCache enough = new CostCache(professional, room);
    NodeCosts kept = struck(enough, 0);
    EdgeCosts edges = edges(enough, ten, eleven);
    assertThat(struck(enough, 0)).isSameAs(kept);
    assertThat(edges(enough, ten, eleven)).isSameAs(edges);
    CostCache less = new CostCache(professional, room - 1);
    NodeCosts forgotten = struck(less, 0);
    edges(less, ten, eleven);
    assertThat(struck(less, 0)).isNotSameAs(forgotten);
  }

  @Test
  void whatHasteCostsOnAHundredWaysIsNotKept() {
    ImmutableList<Grip> ten = E4.subList(0, 10);
    CostCache costs = new CostCache(professional, E4.size() + 3L * (10 * 10 + 32));
    NodeCosts kept = struck(costs, 0);
    EdgeCosts edges = edges(costs, ten, ten);
    assertThat(edges(costs, ten, ten)).isNotSameAs(edges);
    assertThat(struck(costs, 0)).isSameAs(kept);
  }

  @Test
  void waysForgottenTakeRoomAgain() {
    ImmutableList<Grip> ten = E4.subList(0, 10);
    CostCache costs = new CostCache(professional, E4.size() + 3L * (10 * 10 + 32));
    edges(costs, ten, ten);
    struck(costs, 0);
    NodeCosts accented = struck(costs, 1);
    edges(costs, ten, ten);
    assertThat(struck(costs, 1)).isSameAs(accented);
    struck(costs, 2);
    assertThat(struck(costs, 1)).isNotSameAs(accented);
  }

  @Test
  void whatIsForgottenCostsTheSameAgain() {
    CostCache none = new CostCache(professional, 0);
    Transition passing = Transition.between(STRUCK.moments().get(0), STRUCK.moments().get(1));
    EdgeCosts edges = edges(none, E4, E4);
    assertThat(edges(none, E4, E4)).isSameAs(edges);
    struck(none, 0);
    EdgeCosts again = edges(none, E4, E4);
    assertThat(again).isNotSameAs(edges);
    for (int i = 0; i < E4.size(); i++) {
      for (int j = 0; j < E4.size(); j++) {
        assertThat(again.cost(i, j, passing.singing()))
            .isEqualTo(professional.cost(passing, E4.get(i), E4.get(j)));
      }
    }
  }
}
