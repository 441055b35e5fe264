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
import fingering.player.Player;
import fingering.scoring.CostRule;
import fingering.scoring.Scoring;
import fingering.scoring.TimedTransitionRule;
import fingering.scoring.Transition;
import fingering.scoring.TransitionRule;
import fingering.scoring.Weights;
import fingering.scoring.rules.StandardRules;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/**
 * The search evaluates a rule once for all pairs of grips that are equal in what the rule looks at.
 * Each pair still costs what the rules charge for it.
 */
class GroupedRulesTest {
  private static final ImmutableList<String> INSTRUMENTS =
      ImmutableList.of("violin", "viola", "cello", "bass");
  private static final ImmutableList<Integer> LOWEST = ImmutableList.of(55, 48, 36, 28);
  private static final Player BEGINNER =
      Player.parse("beginner", "positions: 1\npatterns: 2-3, closed\nshifts: none");
  private static final int MOST_GRIPS = 40;

  /** Charges for the frame that is reached, so that no two grips may be treated as equal. */
  private record ReachedFrame(String id) implements TransitionRule {
    @Override
    public String name() {
      return id;
    }

    @Override
    public String explanation() {
      return id;
    }

    @Override
    public String unit() {
      return "frame";
    }

    @Override
    public long amount(Transition transition, Grip before, Grip now) {
      return (long) now.frame().index() + now.top().finger().number();
    }
  }

  /** Needs time by finger. */
  private record FingerTime(String id) implements TimedTransitionRule {
    @Override
    public String name() {
      return id;
    }

    @Override
    public String explanation() {
      return id;
    }

    @Override
    public String unit() {
      return "hundredth of a second";
    }

    @Override
    public long unitMicros() {
      return 10_000;
    }

    @Override
    public long needed(Transition transition, Grip before, Grip now) {
      return 90_000L * now.top().finger().number() + 30_000L * before.top().string();
    }
  }

  private static void assertEachEdgeCostsWhatTheRulesCharge(Passage passage, Scoring scoring) {
    GripFinder finder = new GripFinder(Fingerboard.of(passage.instrument()));
    ImmutableList<Moment> moments = Moment.withSurroundings(passage.moments());
    ImmutableList<ImmutableList<Grip>> grips =
        moments.stream()
            .map(finder::grips)
            .map(all -> all.subList(0, Math.min(MOST_GRIPS, all.size())))
            .collect(ImmutableList.toImmutableList());
    LayeredGraph graph = new LayeredGraph(moments, grips, scoring, Penalty.NONE);
    RuleCosts rules = new RuleCosts(graph);
    ForwardPass pass = ForwardPass.of(graph, new Steps(Cancellation.NEVER));
    for (int m = 1; m < moments.size(); m++) {
      for (int i = 0; i < grips.get(m - 1).size(); i++) {
        for (int j = 0; j < grips.get(m).size(); j++) {
          assertThat(pass.edges(m).cost(i, j))
              .as("%s to %s", grips.get(m - 1).get(i), grips.get(m).get(j))
              .isEqualTo(rules.edge(m, i, j));
        }
      }
    }
  }

  private static Scoring preset(String preset) {
    return Scoring.of(StandardRules.forPlayer(BEGINNER), Weights.preset(preset));
  }

  @Property(tries = 60)
  void everyPairOfGripsCostsWhatTheRulesCharge(
      @ForAll int seed, @ForAll @IntRange(min = 0, max = 3) int which) {
    RandomMusic random = new RandomMusic(seed);
    int lowest = LOWEST.get(which);
    String events = random.withDoubleStops(8, lowest, lowest + 26);
    Passage passage = Music.on(INSTRUMENTS.get(which)).tempo(random.tempo()).notes(events);
    assertEachEdgeCostsWhatTheRulesCharge(
        passage, preset(seed % 2 == 0 ? "common-practice" : "advanced"));
  }

  @Test
  void aNoteThatIsSpelledAnewIsNoShiftForTheSameFinger() {
    Passage passage = Music.violin().tempo("quarter=96").notes("G#4/1 Ab4/1 ~G#4/0.25 Ab4/0.25");
    assertEachEdgeCostsWhatTheRulesCharge(passage, preset("common-practice"));
  }

  @Test
  void rulesThatDoNotSayWhatTheyLookAtSeeEveryGrip() {
    ImmutableList<CostRule> rules =
        ImmutableList.of(new ReachedFrame("reached-frame"), new FingerTime("finger-time"));
    Passage passage = Music.violin().tempo("quarter=200").notes("A4/1 B4/0.5 A4/0.25 E5/1");
    assertEachEdgeCostsWhatTheRulesCharge(
        passage, Scoring.of(rules, Weights.parse("own", "reached-frame: 7\nfinger-time: 3")));
  }
}
