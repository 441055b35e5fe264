package fingering.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.fingerboard.Grip;
import fingering.fingerboard.LeftHand;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.music.RandomMusic;
import fingering.player.Extension;
import fingering.player.FingerPattern;
import fingering.player.Player;
import fingering.player.ShiftKind;
import fingering.scoring.Charge;
import fingering.scoring.Scoring;
import fingering.scoring.Weights;
import fingering.scoring.rules.PlayerGroup;
import fingering.scoring.rules.StandardRules;
import fingering.tables.Position;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Plans that the players of a section share. */
class SectionPlansTest {
  private static final ImmutableList<String> INSTRUMENTS =
      ImmutableList.of("violin", "viola", "cello", "bass");
  private static final ImmutableList<Integer> LOWEST = ImmutableList.of(55, 48, 36, 28);

  private static Passage passage(int seed, int which, int notes) {
    RandomMusic random = new RandomMusic(seed);
    int lowest = LOWEST.get(which);
    return Music.on(INSTRUMENTS.get(which))
        .notes(
            which < 2
                ? random.withDoubleStops(notes, lowest, lowest + 26)
                : random.line(notes, lowest, lowest + 24));
  }

  private static <T> ImmutableSet<T> some(Random random, T[] all) {
    return Stream.of(all)
        .filter(one -> random.nextBoolean())
        .collect(ImmutableSet.toImmutableSet());
  }

  /** A player who has learned random things. */
  private static Player learner(Random random) {
    Position[] positions = {Position.HALF, Position.FIRST, Position.SECOND, Position.THIRD};
    return Player.UNKNOWN
        .withPositions(some(random, positions))
        .withPatterns(some(random, FingerPattern.values()))
        .withExtensions(some(random, Extension.values()))
        .withShifts(some(random, ShiftKind.values()));
  }

  private static Scoring scoring(PlayerGroup section) {
    return Scoring.of(section.rules(), Weights.commonPractice());
  }

  private static Plan plan(Passage passage, Scoring scoring) {
    return Planner.of(passage, scoring).plan(Brief.free("free"));
  }

  @Property(tries = 60)
  void aSectionIsChargedAsItsLeastExperiencedPlayer(
      @ForAll int seed, @ForAll @IntRange(min = 0, max = 3) int which) {
    Random random = new Random(seed);
    ImmutableList<Player> players =
        ImmutableList.of(learner(random), learner(random), learner(random));
    Passage passage = passage(seed, which, 10);
    Plan plan = plan(passage, scoring(new PlayerGroup(players)));
    ImmutableList<ImmutableList<Grip>> grips =
        Planner.of(passage, scoring(new PlayerGroup(players))).grips();
    Map<String, Long> most = new HashMap<>();
    for (Player player : players) {
      Scoring own = Scoring.of(StandardRules.forPlayer(player), Weights.commonPractice());
      for (Charge charge : own.explain(passage.moments(), grips, plan.grips())) {
        most.merge(charge.rule() + charge.moment(), charge.cost(), Math::max);
      }
    }
    Map<String, Long> actual = new HashMap<>();
    plan.charges().forEach(charge -> actual.put(charge.rule() + charge.moment(), charge.cost()));
    assertThat(actual).isEqualTo(most);
  }

  @Property(tries = 40)
  void familiarSkillsCostNothingAndAnotherPlayerNeverLowersTheCost(
      @ForAll int seed, @ForAll @IntRange(min = 0, max = 3) int which) {
    Random random = new Random(seed);
    Player one = learner(random);
    Player other = learner(random);
    Passage passage = passage(seed, which, 10);
    Plan alone = plan(passage, scoring(new PlayerGroup(ImmutableList.of(one))));
    assertThat(alone)
        .isEqualTo(
            plan(passage, Scoring.of(StandardRules.forPlayer(one), Weights.commonPractice())));
    Plan together = plan(passage, scoring(new PlayerGroup(ImmutableList.of(one, other))));
    assertThat(together.total()).isGreaterThanOrEqualTo(alone.total());
    assertThat(plan(passage, scoring(new PlayerGroup(ImmutableList.of(other, one)))).total())
        .isEqualTo(together.total());
    assertThat(plan(passage, scoring(new PlayerGroup(ImmutableList.of(one, Player.UNKNOWN, one)))))
        .isEqualTo(alone);
  }

  /** The grips that a hand can hold, regardless of cost. */
  private static Set<String> held(Passage passage, LeftHand hand) {
    Set<String> held = new HashSet<>();
    int m = 0;
    for (ImmutableList<Grip> grips :
        Planner.of(passage, StandardRules.commonPractice(), hand).grips()) {
      for (Grip grip : grips) {
        StringBuilder one = new StringBuilder(m + (grip.divided() ? " divided" : ""));
        grip.placements()
            .forEach(
                p ->
                    one.append(' ')
                        .append(p.string())
                        .append(p.finger())
                        .append(p.frame().display())
                        .append(p.frame().first()));
        if (!grip.divided()) {
          held.add(one.toString());
        }
      }
      m++;
    }
    return held;
  }

  @Property(tries = 60)
  void everyHandCanHoldWhatTheSmallestHandHolds(
      @ForAll int seed, @ForAll @IntRange(min = 0, max = 3) int which) {
    Passage passage = passage(seed, which, 8);
    Set<String> small = held(passage, LeftHand.SMALL);
    assertThat(held(passage, LeftHand.MEDIUM)).containsAll(small);
    assertThat(held(passage, LeftHand.LARGE)).containsAll(small);
  }
}
