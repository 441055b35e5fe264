package fingering.page.music;

import static fingering.music.BeatUnit.QUARTER;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableSet;
import fingering.music.Passage;
import fingering.music.builder.PassageBuilder;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.Planner;
import fingering.scoring.rules.StandardRules;
import fingering.tables.Instruments;
import fingering.tables.Position;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LanesTest {
  @Test
  void openStringIsPlayedAlikeWhereverTheHandWaits() {
    Passage passage =
        PassageBuilder.of(Instruments.standard().named("viola"))
            .meter(3, 4)
            .note("G4", QUARTER)
            .note("D4", QUARTER)
            .note("G4", QUARTER)
            .build();
    Planner planner = Planner.of(passage, StandardRules.commonPractice());
    Plan first = planner.plan(Brief.within("first", ImmutableSet.of(Position.FIRST)));
    Plan third = planner.plan(Brief.within("third", ImmutableSet.of(Position.THIRD)));
    assertThat(third.notes().get(1).open()).isTrue();

    Lanes lanes = Lanes.of(first, Optional.of(third));

    assertThat(lanes.below().get(0).marks())
        .containsOnlyKeys(
            first.notes().get(0).note().address(), first.notes().get(2).note().address());
  }
}
