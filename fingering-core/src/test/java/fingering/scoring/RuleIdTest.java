package fingering.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.scoring.rules.StandardRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each rule of a scoring has an id of its own. */
class RuleIdTest {
  /**
   * A rule that charges nothing.
   *
   * @param id its id
   */
  private record Own(String id) implements NoteRule {
    @Override
    public String name() {
      return "Own";
    }

    @Override
    public String explanation() {
      return "It charges nothing.";
    }

    @Override
    public String unit() {
      return "note";
    }

    @Override
    public long amount(NoteContext context, Grip grip) {
      return 0;
    }
  }

  private static ImmutableList<CostRule> standardAnd(CostRule... more) {
    return ImmutableList.<CostRule>builder().addAll(StandardRules.all()).add(more).build();
  }

  @Test
  void twoRulesWithOneIdAreRefused() {
    CostRule own = new Own("shift");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Scoring.of(standardAnd(own), Weights.commonPractice().with(own, 3)))
        .withMessage("two rules have the id 'shift'; give your rule an id of its own");
  }

  @Test
  void theSameRuleTwiceIsRefused() {
    CostRule own = new Own("own");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Scoring.of(standardAnd(own, own), Weights.commonPractice().with(own, 3)))
        .withMessage("two rules have the id 'own'; give your rule an id of its own");
  }

  @Test
  void aRuleWithTheIdOfTheHabitIsRefusedBesideAHabit() {
    CostRule own = new Own(Habit.ID);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Scoring.of(ImmutableList.of(own), EveryRule.weights()))
        .withMessage("two rules have the id 'habit'; give your rule an id of its own");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "Own", "own rule", "own_rule", "own-", "-own", "own--rule", "cello.own"})
  void anIdOfAnotherFormIsRefused(String id) {
    CostRule own = new Own(id);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Scoring.of(standardAnd(own), Weights.commonPractice().with(own, 3)))
        .withMessage(
            "'" + id + "' is not the id of a rule; write lower case words such as 'long-open'");
  }

  @Test
  void anIdMayHaveDigits() {
    CostRule own = new Own("own-2");
    Scoring scoring = Scoring.of(standardAnd(own), Weights.commonPractice().with(own, 3));
    assertThat(scoring.rules()).contains(own);
  }
}
