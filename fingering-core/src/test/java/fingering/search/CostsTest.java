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
import fingering.scoring.Passing;
import fingering.scoring.Rules;
import fingering.scoring.Scoring;
import fingering.scoring.Stroke;
import fingering.scoring.Weights;
import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Costs that are kept against the same costs reckoned anew by the rules. */
class CostsTest {
  private final Scoring professional = Scoring.of(Rules.all(), Weights.preset("professional"));

  @Property(tries = 25)
  void aCostKeptIsTheCostByTheRulesInMusicThatComesBack(
      @ForAll int seed, @ForAll @IntRange(min = 2, max = 12) int notes) {
    RandomMusic random = new RandomMusic(seed);
    Costs costs = new Costs(professional);
    String once = random.withDoubleStops(notes, 48, 76);
    Passage viola = Music.viola().tempo(random.tempo()).notes(once + " " + once + " ~C4/1 D4/3tr");
    GripFinder finder = new GripFinder(Fingerboard.of(viola.instrument()));
    ImmutableList<Moment> moments = Moment.paced(viola.moments());
    for (int m = 1; m < moments.size(); m++) {
      ImmutableList<Grip> before = finder.grips(moments.get(m - 1));
      ImmutableList<Grip> now = finder.grips(moments.get(m));
      Passing passing = Passing.between(moments.get(m - 1), moments.get(m));
      Stroke stroke = Stroke.of(moments.get(m));
      NodeCosts nodes = costs.of(stroke, costs.number(now), now);
      Ways ways = costs.of(passing, costs.number(before), costs.number(now), before, now);
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
}
