package fingering.plan;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.demand.DemandParser;
import fingering.fingerboard.Frame.Shape;
import fingering.fingerboard.Placement;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.scoring.rules.StandardRules;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Plans for a student who cannot or must not use a finger: common practice, no source. */
class AvoidPlansTest {
  private static boolean occurs(Plan plan, Predicate<Placement> test) {
    return plan.notes().stream().map(PlannedNote::placement).anyMatch(test);
  }

  /** Checks that a technique is in the free plan but not in the one that avoids it. */
  private static Plan planWithout(Passage passage, String technique, Predicate<Placement> test) {
    Planner planner = Planner.of(passage, StandardRules.commonPractice());
    Plan free = planner.plan(Brief.free("free choice"));
    Plan constrained =
        planner.plan(
            Brief.builder("constrained")
                .addDemand(DemandParser.of(passage.instrument()).avoid(technique).get(0))
                .build());
    assertThat(occurs(free, test)).as("free: %s", technique).isTrue();
    assertThat(occurs(constrained, test)).as("without: %s", technique).isFalse();
    assertThat(constrained.total()).isGreaterThan(free.total());
    return constrained;
  }

  @ParameterizedTest
  @CsvSource({
    "first-finger, 1, D4/1 E4/1 F#4/1 G4/1",
    "second-finger, 2, D4/1 E4/1 F#4/1 G4/1",
    "third-finger, 3, D4/1 E4/1 F#4/1 G4/1",
    "fourth-finger, 4, A5/1 B5/1 A5/1 G5/1",
  })
  void anInjuredFingerIsNotUsed(String technique, String symbol, String events) {
    planWithout(
        Music.violin().notes(events),
        technique,
        placement -> placement.finger().symbol().equals(symbol));
  }

  @Test
  void aCellistWithoutExtensionsShiftsInstead() {
    Plan constrained =
        planWithout(
            Music.cello().notes("A2/1 B2/1 C#3/1 D3/1 C#3/1 B2/1 A2/1"),
            "extensions",
            placement -> placement.stopped() && placement.frame().shape() != Shape.CLOSED);

    assertThat(constrained.notes().stream().anyMatch(PlannedNote::shift)).isTrue();
  }

  @Test
  void aCellistWithoutTheThumbReachesHighNotesWithTheFingers() {
    planWithout(
        Music.cello().notes("A4/1 D5/1 E5/1 F#5/1 G5/1 A5/1 D5/1 A4/1"),
        "thumb",
        placement -> placement.finger().symbol().equals("T"));
  }
}
