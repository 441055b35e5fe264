package fingering.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.google.common.collect.ImmutableList;
import fingering.demand.EarlierPlan;
import fingering.demand.EarlierPlan.EarlierNote;
import fingering.demand.KeepPlan;
import fingering.demand.MeasureSpan;
import fingering.fingerboard.Placement;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.music.RandomMusic;
import fingering.scoring.rules.StandardRules;
import fingering.tables.FingeringException;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalInt;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class EarlierPlanTest {
  private static EarlierPlan of(Plan plan) {
    return new EarlierPlan(
        "plan",
        plan.notes().stream().map(EarlierPlanTest::note).collect(ImmutableList.toImmutableList()));
  }

  private static EarlierNote note(PlannedNote note) {
    Placement placement = note.placement();
    return new EarlierNote(
        note.note().place().measure(),
        OptionalInt.of(note.note().place().measureIndex()),
        note.note().place().onset().bigDecimalValue(6, RoundingMode.HALF_UP),
        note.note().written(),
        note.note().midi(),
        new KeepPlan.KeptFingering(
            placement.string(),
            placement.finger(),
            note.open() ? Optional.empty() : Optional.of(placement.frame().position()),
            note.open() ? OptionalInt.empty() : placement.frame().thumb()));
  }

  private static void assertKept(Passage passage, int which) {
    Planner planner = Planner.of(passage, StandardRules.commonPractice());
    ImmutableList<Plan> plans = planner.plans(Brief.free("free"), which);
    Plan some = plans.get(plans.size() - 1);
    KeepPlan kept = of(some).demand(passage, MeasureSpan.WHOLE);
    Plan again = planner.plan(Brief.builder("kept").addDemand(kept).build());
    assertThat(kept.notes()).hasSize(some.notes().size());
    for (int i = 0; i < some.notes().size(); i++) {
      assertThat(again.notes().get(i).sameFingering(some.notes().get(i))).isTrue();
    }
    assertThat(again.total()).isLessThanOrEqualTo(some.total());
  }

  @Property(tries = 30)
  void everyNoteOfAChordKeepsItsFingering(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 9) int which) {
    assertKept(Music.viola().notes(new RandomMusic(seed).withDoubleStops(8, 48, 76)), which);
  }

  @Property(tries = 20)
  void theThumbKeepsItsPlace(@ForAll int seed, @ForAll @IntRange(min = 1, max = 9) int which) {
    assertKept(Music.cello().notes(new RandomMusic(seed).line(6, 60, 80)), which);
  }

  @Test
  void twoNotesOfOnePitchAtOnePlaceAreMatchedInOrder() {
    // A unison of an open string and the fourth finger below it: common practice, no source.
    assertKept(Music.viola().notes("D4/1 A4+A4/1 D4/1"), 3);
  }

  @Test
  void aMeasureOutsideThePassageIsSkipped() {
    Passage four = Music.viola().notes("C4/4 D4/4 E4/4 F4/4");
    Passage two = Music.viola().notes("C4/4 D4/4");
    EarlierPlan whole =
        of(Planner.of(four, StandardRules.commonPractice()).plan(Brief.free("free")));
    assertThat(whole.demand(two, MeasureSpan.WHOLE).notes()).hasSize(2);
    assertThat(whole.demand(four, MeasureSpan.parse("2-3")).notes()).hasSize(2);
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> whole.demand(Music.viola().notes("C4/4 E4/4"), MeasureSpan.WHOLE))
        .withMessageContaining("D4 in measure 2, onset 0, where the score has E4");
  }
}
