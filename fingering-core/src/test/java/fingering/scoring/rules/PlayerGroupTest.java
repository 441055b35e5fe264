package fingering.scoring.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.LeftHand;
import fingering.player.Player;
import fingering.scoring.CostRule;
import fingering.scoring.Weights;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Players who share one plan. Common practice, no source. */
class PlayerGroupTest {
  private static final Player FIRST_ONLY = player("positions: 1\nshifts: none");
  private static final Player THIRD_ONLY = player("positions: 3\nshifts: slur");
  private static final PlayerGroup BOTH = new PlayerGroup(ImmutableList.of(FIRST_ONLY, THIRD_ONLY));
  private static final RuleCase SLURRED_UP =
      RuleCase.on("violin", "B4/1 ~D5/1").by(2, "1", "1st").by(2, "1", "3rd");

  @Test
  void aSkillThatIsNewToOneOrTwoPlayersIsChargedOnce() {
    RuleCase second = RuleCase.on("violin", "C#5/1").by(2, "1", "2nd");
    RuleCase third = RuleCase.on("violin", "D5/1").by(2, "1", "3rd");
    assertThat(second.charged("new-position", BOTH.rules())).isEqualTo(1);
    assertThat(third.charged("new-position", BOTH.rules())).isEqualTo(1);
    assertThat(third.charged("new-position", new PlayerGroup(ImmutableList.of(THIRD_ONLY)).rules()))
        .isZero();
  }

  @Test
  void theOrderOfPlayersDoesNotMatter() {
    PlayerGroup turned = new PlayerGroup(BOTH.players().reverse());
    RuleCase third = RuleCase.on("violin", "D5/1").by(2, "1", "3rd");
    assertThat(third.charged("new-position", turned.rules())).isEqualTo(1);
    assertThat(SLURRED_UP.charged("new-shift", turned.rules())).isEqualTo(2);
  }

  @Test
  void aShiftIsChargedAsForThePlayerToWhomMostIsNew() {
    assertThat(SLURRED_UP.charged("new-shift", BOTH.rules())).isEqualTo(2);
    assertThat(SLURRED_UP.charged("new-shift", THIRD_ONLY)).isEqualTo(1);
  }

  @Test
  void otherRulesChargeAsForOnePlayer() {
    assertThat(SLURRED_UP.charged("shift", BOTH.rules())).isEqualTo(10);
    assertThat(BOTH.rules())
        .extracting(CostRule::id)
        .isEqualTo(StandardRules.all().stream().map(CostRule::id).toList());
  }

  @Test
  void playersWithoutListedSkillsAreChargedNothing() {
    PlayerGroup unknown = new PlayerGroup(ImmutableList.of(Player.UNKNOWN, Player.UNKNOWN));
    assertThat(unknown.rules())
        .filteredOn(rule -> rule.id().startsWith("new-"))
        .hasSize(5)
        .allMatch(CostRule::idle);
  }

  private static Player player(String text) {
    return Player.parse("player", text);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "hand: small | hand: large | small",
        "hand: large | size: 16 | medium",
        "hand: 98mm | hand: medium | 98mm",
        "hand: 111mm | hand: large | 111mm",
      })
  void theSmallestHandDecides(String one, String other, String smallest) {
    PlayerGroup section = new PlayerGroup(ImmutableList.of(player(one), player(other)));
    Instrument viola = Instruments.standard().named("viola");
    assertThat(section.smallestReach(viola).hand().orElse(LeftHand.MEDIUM))
        .isEqualTo(LeftHand.parse(smallest));
    assertThat(section.smallestHand(viola)).isEqualTo(LeftHand.parse(smallest));
  }

  // One hand reaches less of a longer string: geometry.
  @Test
  void ofEqualHandsTheOneOnTheLongerStringReachesLeast() {
    Player shorter = player("instrument: viola\nsize: 15\nhand: 105mm");
    Player longer = player("instrument: viola\nsize: 16.5\nhand: 105mm");
    PlayerGroup section = new PlayerGroup(ImmutableList.of(shorter, longer));
    assertThat(section.smallestReach(Instruments.standard().named("viola"))).isEqualTo(longer);
  }

  @Test
  void thePresetIsThatOfTheLeastExperienced() {
    assertThat(
            new PlayerGroup(ImmutableList.of(player("preset: advanced"), player("size: 1")))
                .preset())
        .hasValue("common-practice");
    assertThat(
            new PlayerGroup(
                    ImmutableList.of(player("preset: intermediate"), player("preset: beginner")))
                .preset())
        .hasValue("beginner");
    assertThat(new PlayerGroup(ImmutableList.of(Player.UNKNOWN)).preset()).isEmpty();
    // Every preset has its place among them.
    for (String preset : Weights.presets()) {
      assertThat(
              new PlayerGroup(
                      ImmutableList.of(player("preset: " + preset), player("preset: beginner")))
                  .preset())
          .hasValue("beginner");
      assertThat(
              new PlayerGroup(
                      ImmutableList.of(player("preset: advanced"), player("preset: " + preset)))
                  .preset())
          .hasValue(preset);
    }
  }

  @Test
  void aSectionPlaysOneInstrument() {
    PlayerGroup mixed =
        new PlayerGroup(ImmutableList.of(player("instrument: viola"), player("instrument: cello")));
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(mixed::instrument)
        .withMessageContaining("play the viola and the cello");
    assertThat(
            new PlayerGroup(ImmutableList.of(player("instrument: viola"), Player.UNKNOWN))
                .instrument())
        .isEqualTo(Optional.of(Instruments.standard().named("viola")));
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> new PlayerGroup(ImmutableList.of()));
  }
}
