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
  private static boolean comes(Plan plan, Predicate<Placement> what) {
    return plan.notes().stream().map(PlannedNote::placement).anyMatch(what);
  }

  /** Checks that a technique is in the free plan but not in the one that avoids it. */
  private static Plan without(Passage passage, String thing, Predicate<Placement> what) {
    Planner planner = Planner.of(passage, StandardRules.commonPractice());
    Plan free = planner.plan(Brief.free("free choice"));
    Plan asked =
        planner.plan(
            Brief.builder("asked")
                .addDemand(DemandParser.of(passage.instrument()).avoid(thing).get(0))
                .build());
    assertThat(comes(free, what)).as("free: %s", thing).isTrue();
    assertThat(comes(asked, what)).as("without: %s", thing).isFalse();
    assertThat(asked.total()).isGreaterThan(free.total());
    return asked;
  }

  @ParameterizedTest
  @CsvSource({
    "first-finger, 1, D4/1 E4/1 F#4/1 G4/1",
    "second-finger, 2, D4/1 E4/1 F#4/1 G4/1",
    "third-finger, 3, D4/1 E4/1 F#4/1 G4/1",
    "fourth-finger, 4, A5/1 B5/1 A5/1 G5/1",
  })
  void anInjuredFingerIsNotUsed(String thing, String symbol, String events) {
    without(Music.violin().notes(events), thing, taken -> taken.finger().symbol().equals(symbol));
  }

  @Test
  void aCellistWithoutExtensionsShiftsInstead() {
    Plan asked =
        without(
            Music.cello().notes("A2/1 B2/1 C#3/1 D3/1 C#3/1 B2/1 A2/1"),
            "extensions",
            taken -> taken.stopped() && taken.frame().shape() != Shape.CLOSED);

    assertThat(asked.notes().stream().anyMatch(PlannedNote::shift)).isTrue();
  }

  @Test
  void aCellistWithoutTheThumbReachesHighNotesWithTheFingers() {
    without(
        Music.cello().notes("A4/1 D5/1 E5/1 F#5/1 G5/1 A5/1 D5/1 A4/1"),
        "thumb",
        taken -> taken.finger().symbol().equals("T"));
  }
}
