package fingering.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fingering.fingerboard.Grip;
import fingering.scoring.rules.StandardRules;
import fingering.tables.FingeringException;
import fingering.tables.Instrument.HandKind;
import org.junit.jupiter.api.Test;

/** Weights with other points for one rule. */
class ChangedWeightsTest {
  private record Everything(String id) implements NoteRule {
    @Override
    public String name() {
      return "Everything";
    }

    @Override
    public String explanation() {
      return "Every note is charged.";
    }

    @Override
    public String unit() {
      return "note";
    }

    @Override
    public long amount(NoteContext context, Grip grip) {
      return 1;
    }
  }

  @Test
  void oneRuleCanHaveOtherPoints() {
    Weights usual = Weights.commonPractice();
    Weights changed = usual.with("shift", 7).with("cello.shift", 9);
    CostRule shift =
        StandardRules.all().stream()
            .filter(rule -> rule.id().equals("shift"))
            .findFirst()
            .orElseThrow();
    assertThat(changed.of(shift, HandKind.VIOLIN)).isEqualTo(7);
    assertThat(changed.of(shift, HandKind.CELLO)).isEqualTo(9);
    assertThat(changed.with("shift", 8).of(shift, HandKind.CELLO)).isEqualTo(8);
  }

  @Test
  void aRuleOfOnesOwnCanHavePoints() {
    CostRule own = new Everything("everything");
    Weights weights = Weights.commonPractice().with(own, 3);
    assertThat(weights.of(own, HandKind.VIOLIN)).isEqualTo(3);
    assertThat(weights.with("everything", 4).of(own, HandKind.VIOLIN)).isEqualTo(4);
  }

  @Test
  void pointsForUnknownRulesAndPointsOutOfRangeAreRefused() {
    Weights weights = Weights.commonPractice();
    assertThatThrownBy(() -> weights.with("shfit", 7))
        .isInstanceOf(FingeringException.class)
        .hasMessage("These weights have no rule 'shfit'; did you mean 'shift'?");
    assertThatThrownBy(() -> weights.with("cello.shfit", 7))
        .hasMessage("These weights have no rule 'cello.shfit'; did you mean 'cello.shift'?");
    assertThatThrownBy(() -> weights.with("everything", 7))
        .isInstanceOf(FingeringException.class)
        .hasMessage(
            "These weights have no rule 'everything'; for a rule of your own, pass the rule instead"
                + " of its id.");
    assertThatThrownBy(() -> weights.with("shift", -1))
        .isInstanceOf(FingeringException.class)
        .hasMessage("-1 points cannot be charged for 'shift'; give 0 to 999999.");
    assertThatThrownBy(() -> weights.with("shift", 1_000_000))
        .isInstanceOf(FingeringException.class);
  }
}
