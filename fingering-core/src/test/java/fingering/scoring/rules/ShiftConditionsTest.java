package fingering.scoring.rules;

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
import fingering.scoring.HandMovement;
import fingering.scoring.ShiftCondition;
import fingering.scoring.TimedTransitionRule;
import fingering.scoring.Transition;
import fingering.scoring.TransitionRule;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Rules find nothing outside the conditions under which the search asks them. */
class ShiftConditionsTest {
  private static final ImmutableList<String> INSTRUMENTS =
      ImmutableList.of("violin", "viola", "cello");
  private static final ImmutableList<Integer> LOWEST = ImmutableList.of(55, 48, 36);
  private static final Player BEGINNER =
      Player.parse("beginner", "positions: 1\npatterns: 2-3, closed\nshifts: none");
  private static final ImmutableList<TransitionRule> RULES = rules(TransitionRule.class);
  private static final ImmutableList<TimedTransitionRule> TIMED = rules(TimedTransitionRule.class);

  private static <R extends CostRule> ImmutableList<R> rules(Class<R> kind) {
    return StandardRules.forPlayer(BEGINNER).stream()
        .filter(kind::isInstance)
        .map(kind::cast)
        .collect(ImmutableList.toImmutableList());
  }

  @Property(tries = 25)
  void aRuleFindsNothingWhereTheSearchDoesNotAskIt(
      @ForAll int seed, @ForAll @IntRange(min = 0, max = 2) int which) {
    RandomMusic random = new RandomMusic(seed);
    int lowest = LOWEST.get(which);
    String events = random.withDoubleStops(6, lowest, lowest + 24);
    Passage passage = Music.on(INSTRUMENTS.get(which)).tempo(random.tempo()).notes(events);
    GripFinder finder = new GripFinder(Fingerboard.of(passage.instrument()));
    List<Moment> moments = Moment.withSurroundings(passage.moments());
    for (int m = 1; m < moments.size(); m++) {
      Transition transition = Transition.between(moments.get(m - 1), moments.get(m));
      for (Grip before : some(finder.grips(moments.get(m - 1)), seed)) {
        for (Grip now : some(finder.grips(moments.get(m)), seed)) {
          boolean shifts = HandMovement.shifts(transition, before, now);
          for (TransitionRule rule : RULES) {
            if (rule.amount(transition, before, now) > 0) {
              assertThat(rule.appliesTo(transition)).as(rule.id()).isTrue();
              assertMet(rule, rule.condition(), shifts);
            }
          }
          for (TimedTransitionRule rule : TIMED) {
            if (rule.needed(transition, before, now) > 0) {
              assertMet(rule, rule.condition(), shifts);
            }
          }
        }
      }
    }
  }

  private static void assertMet(CostRule rule, ShiftCondition condition, boolean shifts) {
    assertThat(condition)
        .as(rule.id())
        .isIn(ShiftCondition.ANY, shifts ? ShiftCondition.SHIFT : ShiftCondition.STAY);
  }

  private static List<Grip> some(List<Grip> grips, long seed) {
    Random random = new Random(seed);
    return random.ints(10, 0, grips.size()).mapToObj(grips::get).toList();
  }

  private static List<String> asked(String events) {
    List<Moment> moments = Music.viola().tempo("quarter=60").notes(events).moments();
    Transition transition = Transition.between(moments.get(0), moments.get(1));
    return RULES.stream().filter(rule -> rule.appliesTo(transition)).map(CostRule::id).toList();
  }

  @Test
  void crossingRulesAreNotAskedAboutPluckedNotes() {
    assertThat(asked("D3/0.1pz E3/1pz"))
        .doesNotContain(
            "crossing",
            "skipped-string",
            "crossing-quick",
            "crossing-against-line",
            "crossing-on-step");
  }

  @Test
  void rulesOnSlursAreNotAskedAboutDetachedNotes() {
    assertThat(asked("D3/1 E3/1")).doesNotContain("crossing-slurred", "shift-slurred");
    assertThat(asked("D3/1 ~E3/1")).contains("crossing-slurred", "shift-slurred");
  }

  @Test
  void quickCrossingsAreNotAskedAfterLongNotes() {
    assertThat(asked("D3/1 E3/1")).doesNotContain("crossing-quick");
  }

  @Test
  void noCrossingIsAgainstALineThatStays() {
    assertThat(asked("D3/1 D3/1"))
        .doesNotContain("crossing-against-line")
        .contains("repeated-note");
  }

  @Test
  void aLeapIsNotAStep() {
    assertThat(asked("D3/1 A3/1")).doesNotContain("crossing-on-step");
  }

  @Test
  void rulesOnFingersAreNotAskedAfterALongRest() {
    assertThat(asked("D3/1 r/1 E3/1"))
        .doesNotContain(
            "same-finger-hop",
            "finger-slide",
            "wide-fingers",
            "narrow-fingers",
            "cello-extension-change",
            "cello-extension-upper");
  }

  @Test
  void heldNotesAreNotAskedAboutWhereNoneAreHeld() {
    assertThat(asked("D3/1 E3/1")).doesNotContain("held-note", "repeated-note");
  }
}
