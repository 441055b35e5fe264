package fingering.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.music.RandomMusic;
import fingering.scoring.Charge;
import fingering.scoring.CostRule;
import fingering.scoring.Scoring;
import fingering.scoring.ShiftCondition;
import fingering.scoring.TimedTransitionRule;
import fingering.scoring.Transition;
import fingering.scoring.Weights;
import fingering.scoring.rules.StandardRules;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** A timed rule of a user's own: plans and explanations agree on what it charges. */
class TimedRuleTest {
  /** Charges an open string before a note that follows within so many microseconds. */
  private record OpenBefore(long micros, long unitMicros, ShiftCondition condition)
      implements TimedTransitionRule {
    @Override
    public String id() {
      return "open-before";
    }

    @Override
    public String name() {
      return "Open string in a hurry";
    }

    @Override
    public String explanation() {
      return "An open string rings into a note that follows at once.";
    }

    @Override
    public String unit() {
      return "tenth of a second";
    }

    @Override
    public long needed(Transition transition, Grip before, Grip now) {
      return before.open() ? micros : 0;
    }
  }

  private static final OpenBefore RULE = new OpenBefore(600_000, 100_000, ShiftCondition.ANY);

  /** A weight so low that no other fingering is cheaper. */
  private static final int LOW = 1;

  private static Scoring with(CostRule rule, int points) {
    return Scoring.of(
        ImmutableList.<CostRule>builder().addAll(StandardRules.all()).add(rule).build(),
        Weights.parse("own", "open-before: " + points).orElse(Weights.commonPractice()));
  }

  private static Path best(Passage passage, Scoring scoring) {
    LayeredGraph all = Thinned.all(passage);
    LayeredGraph graph = new LayeredGraph(all.moments(), all.grips(), scoring, Penalty.NONE);
    return PathFinder.best(graph, Requirement.NONE).orElseThrow();
  }

  private static Stream<Charge> explained(Passage passage, Scoring scoring) {
    return scoring
        .explain(passage.moments(), Thinned.all(passage).grips(), best(passage, scoring).grips())
        .stream();
  }

  /** The amounts of the rule in the explanation of the best path. */
  private static ImmutableList<Long> charged(String notes, CostRule rule) {
    Passage passage = Music.viola().tempo("quarter=60").notes(notes);
    Scoring scoring = with(rule, LOW);
    return explained(passage, scoring)
        .filter(charge -> charge.rule().equals("open-before"))
        .map(Charge::amount)
        .collect(ImmutableList.toImmutableList());
  }

  @Property(tries = 40)
  void theTotalOfAPlanIsTheSumOfItsCharges(@ForAll int seed, @ForAll ShiftCondition condition) {
    RandomMusic random = new RandomMusic(seed);
    Passage passage = Music.viola().tempo(random.tempo()).notes(random.line(8, 48, 76)); // C3-E5
    Scoring scoring = with(new OpenBefore(600_000, 10_000, condition), 50);
    Path best = best(passage, scoring);
    assertThat(explained(passage, scoring).mapToLong(Charge::cost).sum()).isEqualTo(best.cost());
  }

  @Property(tries = 40)
  void theBestPathIsTheOneFoundByTryingAll(
      @ForAll int seed, @ForAll @IntRange(min = 2, max = 4) int notes) {
    RandomMusic random = new RandomMusic(seed);
    Passage passage = Music.viola().tempo(random.tempo()).notes(random.line(notes, 48, 62));
    LayeredGraph some = Thinned.graph(passage, 6, seed, Thinned.NO_PENALTY);
    LayeredGraph graph =
        new LayeredGraph(some.moments(), some.grips(), with(RULE, 500), Penalty.NONE);
    assertThat(PathFinder.best(graph, Requirement.NONE))
        .isEqualTo(BruteForce.best(graph, path -> true));
  }

  // C3 is the lowest string of the viola and can only be played open. From an open string the hand
  // has all the time until the next note: here 0.3 s, so that three tenths of 0.6 s are missing.
  @Test
  void anOpenStringIsChargedBeforeANoteThatFollowsWithinTheTime() {
    assertThat(charged("C3/0.3 E3/1", RULE)).containsExactly(3L);
    assertThat(charged("C3/0.6 E3/1", RULE)).isEmpty();
    assertThat(charged("C3/2 E3/1", RULE)).isEmpty();
  }

  @Test
  void theConditionLimitsTheChargeInPlanAndExplanation() {
    OpenBefore whereItShifts = new OpenBefore(600_000, 100_000, ShiftCondition.SHIFT);
    OpenBefore whereItStays = new OpenBefore(600_000, 100_000, ShiftCondition.STAY);
    assertThat(charged("C3/0.3 E3/1", whereItShifts)).isEmpty();
    assertThat(charged("C3/0.3 E3/1", whereItStays)).containsExactly(3L);
  }

  @Test
  void anotherFingeringIsChosenToAvoidTheCharge() {
    Passage passage = Music.viola().tempo("quarter=60").notes("B3/1 G3/0.3 B3/1");
    Path usual = PathFinder.best(Thinned.all(passage), Requirement.NONE).orElseThrow();
    assertThat(usual.grips().get(1).open()).isTrue();
    assertThat(best(passage, with(RULE, 500)).grips().get(1).open()).isFalse();
  }

  @Test
  void moreTimeThanAnyMovementTakesIsRefused() {
    OpenBefore slow = new OpenBefore(1_000_001, 100_000, ShiftCondition.ANY);
    assertThatIllegalStateException()
        .isThrownBy(() -> charged("C3/0.3 E3/1", slow))
        .withMessage("the rule 'open-before' needs 1000001 microseconds, not 0 to 1000000");
  }

  @Test
  void aUnitOfNoTimeIsRefused() {
    OpenBefore endless = new OpenBefore(600_000, 0, ShiftCondition.ANY);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> with(endless, LOW))
        .withMessage("the unit of the rule 'open-before' is shorter than a microsecond");
  }
}
