package fingering.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.LeftHand;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Players who share one plan: common practice, no source. */
class SectionTest {
  private static final Player FIRST_ONLY = player("positions = 1\nshifts = none");
  private static final Player THIRD_ONLY = player("positions = 3\nshifts = slur");
  private static final Section BOTH = new Section(ImmutableList.of(FIRST_ONLY, THIRD_ONLY));
  private static final Way SLURRED_UP =
      Way.on("violin", "B4/1 ~D5/1").by(2, "1", "1st").by(2, "1", "3rd");

  @Test
  void whatIsNewToOneIsChargedAndWhatIsNewToTwoIsChargedOnce() {
    Way second = Way.on("violin", "C#5/1").by(2, "1", "2nd");
    Way third = Way.on("violin", "D5/1").by(2, "1", "3rd");
    assertThat(second.charged("new-position", BOTH.rules())).isEqualTo(1);
    assertThat(third.charged("new-position", BOTH.rules())).isEqualTo(1);
    assertThat(third.charged("new-position", new Section(ImmutableList.of(THIRD_ONLY)).rules()))
        .isZero();
  }

  @Test
  void whatIsNewToTheSecondPlayerIsChargedTooWhoeverComesFirst() {
    Section turned = new Section(BOTH.players().reverse());
    Way third = Way.on("violin", "D5/1").by(2, "1", "3rd");
    assertThat(third.charged("new-position", turned.rules())).isEqualTo(1);
    assertThat(SLURRED_UP.charged("new-shift", turned.rules())).isEqualTo(2);
  }

  @Test
  void aShiftIsChargedAsToThePlayerToWhomMostOfItIsNew() {
    assertThat(SLURRED_UP.charged("new-shift", BOTH.rules())).isEqualTo(2);
    assertThat(SLURRED_UP.charged("new-shift", THIRD_ONLY)).isEqualTo(1);
  }

  @Test
  void whatSetsTheFingeringItselfIsChargedAsToOnePlayer() {
    assertThat(SLURRED_UP.charged("shift", BOTH.rules())).isEqualTo(10);
    assertThat(BOTH.rules())
        .extracting(CostRule::id)
        .isEqualTo(Rules.all().stream().map(CostRule::id).toList());
  }

  @Test
  void ofPlayersOfWhomNothingIsSaidNothingIsAsked() {
    Section unknown = new Section(ImmutableList.of(Player.UNKNOWN, Player.UNKNOWN));
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
        "hand = small | hand = large | small",
        "hand = large | size = 16 | medium",
        "hand = 98mm | hand = medium | 98mm",
        "hand = 111mm | hand = large | 111mm",
      })
  void theSmallestHandDecides(String one, String other, String smallest) {
    Section section = new Section(ImmutableList.of(player(one), player(other)));
    Instrument viola = Instruments.standard().named("viola");
    assertThat(section.narrowest(viola).hand().orElse(LeftHand.MEDIUM))
        .isEqualTo(LeftHand.parse(smallest));
    assertThat(section.smallestHand(viola)).isEqualTo(LeftHand.parse(smallest));
  }

  // One hand reaches less of a longer string: geometry.
  @Test
  void ofEqualHandsTheOneOnTheLongerStringReachesLeast() {
    Player shorter = player("instrument = viola\nsize = 15\nhand = 105mm");
    Player longer = player("instrument = viola\nsize = 16.5\nhand = 105mm");
    Section section = new Section(ImmutableList.of(shorter, longer));
    assertThat(section.narrowest(Instruments.standard().named("viola"))).isEqualTo(longer);
  }

  @Test
  void theLeastExperiencedNamesThePreset() {
    assertThat(
            new Section(ImmutableList.of(player("preset = professional"), player("size = 1")))
                .preset())
        .hasValue("common-practice");
    assertThat(
            new Section(
                    ImmutableList.of(
                        player("preset = intermediate"), player("preset = first-years")))
                .preset())
        .hasValue("first-years");
    assertThat(new Section(ImmutableList.of(Player.UNKNOWN)).preset()).isEmpty();
    // Every preset has its place among them.
    for (String preset : Weights.presets()) {
      assertThat(
              new Section(
                      ImmutableList.of(
                          player("preset = " + preset), player("preset = first-years")))
                  .preset())
          .hasValue("first-years");
      assertThat(
              new Section(
                      ImmutableList.of(
                          player("preset = professional"), player("preset = " + preset)))
                  .preset())
          .hasValue(preset);
    }
  }

  @Test
  void aSectionPlaysOneInstrument() {
    Section mixed =
        new Section(ImmutableList.of(player("instrument = viola"), player("instrument = cello")));
    assertThatIllegalArgumentException()
        .isThrownBy(mixed::instrument)
        .withMessageContaining("play the viola and the cello");
    assertThat(
            new Section(ImmutableList.of(player("instrument = viola"), Player.UNKNOWN))
                .instrument())
        .isEqualTo(Optional.of(Instruments.standard().named("viola")));
    assertThatIllegalArgumentException().isThrownBy(() -> new Section(ImmutableList.of()));
  }
}
