package fingering.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.demand.AllowPositions;
import fingering.demand.MeasureSpan;
import fingering.demand.StayIn;
import fingering.fingerboard.LeftHand;
import fingering.music.Measure;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.plan.Brief;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.plan.PlanComparer;
import fingering.scoring.rules.StandardRules;
import fingering.tables.Position;
import fingering.tempo.ComfortableTempo;
import fingering.tempo.PlayerSpeed;
import fingering.verdict.Verdict.Reason;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Verdicts on compared plans: common practice, no source. */
class VerdictTest {
  private static final PlayerSpeed SPEED = PlayerSpeed.named("intermediate");
  private static final List<String> SCALE =
      List.of("G3", "A3", "B3", "D4", "E4", "F#4", "G4", "A4", "B4", "C5", "D5", "E5", "F#5");

  private static PlanComparer comparer(Passage passage) {
    return PlanComparer.of(
        passage, StandardRules.commonPractice(), LeftHand.MEDIUM, ImmutableSet.of());
  }

  private static Comparison of(Plan... plans) {
    return new Comparison(plans[0].passage(), ImmutableList.copyOf(plans), ImmutableList.of());
  }

  private static Plan plan(Passage passage, String name, Position position) {
    return comparer(passage).plan(Brief.within(name, ImmutableSet.of(position)));
  }

  @Test
  void onePlanHasNoRival() {
    Passage passage = Music.on("violin").tempo("quarter=80").notes("D4/1 E4/1 F#4/1 G4/1");
    Plan plan = plan(passage, "low", Position.FIRST);
    Verdict verdict = Verdict.of(of(plan), SPEED);
    assertThat(verdict.reason()).isEqualTo(Reason.ONLY);
    assertThat(verdict.rival()).isEmpty();
    assertThat(verdict.differing()).isEmpty();
    assertThat(Verdict.of(of(plan, plan.withName("again")), SPEED).reason())
        .isEqualTo(Reason.ALIKE);
  }

  /** In 2nd position the scale only gets more crossings and fourth fingers. */
  @Test
  void aPlanThatSavesNothingIsNamed() {
    Passage passage =
        Music.on("violin").tempo("quarter=80").notes("D4/1 E4/1 F#4/1 D4/1 E4/1 F#4/1 E4/2");
    Plan low = plan(passage, "low", Position.FIRST);
    Plan second = plan(passage, "second", Position.SECOND);
    assertThat(PlanFigures.of(second).minus(PlanFigures.of(low)).nowhereBelowZero()).isTrue();
    Verdict verdict = Verdict.of(of(second, low), SPEED);
    assertThat(verdict.plan().name()).isEqualTo("low");
    assertThat(verdict.rival().orElseThrow().name()).isEqualTo("second");
    assertThat(verdict.reason()).isEqualTo(Reason.RIVAL_SAVES_NOTHING);
    assertThat(verdict.close()).isFalse();
  }

  /** Where the cheaper plan is too fast to be comfortable, the other is taken. */
  @Property(tries = 40)
  void aComfortablePlanComesBeforeACheaperOne(
      @ForAll @Size(min = 4, max = 10) List<@IntRange(max = 12) Integer> steps,
      @ForAll @IntRange(min = 60, max = 300) int tempo) {
    Comparison comparison = comparer(passage(steps, tempo)).comparePositions(true);
    Verdict verdict = Verdict.of(comparison, SPEED);
    boolean anyComfortable = comparison.plans().stream().anyMatch(VerdictTest::comfortable);
    assertThat(comfortable(verdict.plan())).isEqualTo(anyComfortable);
    assertThat(comparison.plans())
        .filteredOn(plan -> comfortable(plan) == anyComfortable)
        .allSatisfy(
            plan -> assertThat(plan.total()).isGreaterThanOrEqualTo(verdict.plan().total()));
  }

  /** Outside the differences two plans have the same fingering, and inside they differ. */
  @Property(tries = 40)
  void differencesAreTheMeasuresWithOtherFingers(
      @ForAll @Size(min = 4, max = 16) List<@IntRange(max = 12) Integer> steps) {
    Comparison comparison = comparer(passage(steps, 80)).comparePositions(false);
    Plan one = comparison.plans().get(0);
    for (Plan other : comparison.plans()) {
      ImmutableList<Measure> differing = of(one, other).differingMeasures();
      for (int measure = 0; measure < one.passage().measures().size(); measure++) {
        int index = measure;
        boolean differs = false;
        for (int i = 0; i < one.notes().size(); i++) {
          differs |=
              one.notes().get(i).note().place().measureIndex() == index
                  && !one.notes().get(i).sameFingering(other.notes().get(i));
        }
        assertThat(differing.stream().anyMatch(each -> each.index() == index)).isEqualTo(differs);
      }
    }
  }

  /** A dropped demand saves what an exact search without it saves. */
  @Property(tries = 20)
  void pricesAreDifferencesOfBestPlans(
      @ForAll @Size(min = 8, max = 12) List<@IntRange(min = 6, max = 12) Integer> steps) {
    Passage passage = passage(steps, 80);
    PlanComparer comparer = comparer(passage);
    StayIn third = new StayIn(Position.THIRD, MeasureSpan.parse("2"));
    AllowPositions low =
        new AllowPositions(ImmutableSet.of(Position.FIRST), MeasureSpan.parse("1"));
    Brief both = Brief.builder("both").addDemand(third).addDemand(low).build();
    Plan plan = comparer.plan(both);
    long free = comparer.plan(Brief.free("free")).total();
    long onlyThird = comparer.plan(Brief.builder("a").addDemand(third).build()).total();
    long onlyLow = comparer.plan(Brief.builder("b").addDemand(low).build()).total();
    ImmutableList<DemandPrice> prices = DemandPrice.of(plan, comparer::plan);
    assertThat(prices)
        .extracting(DemandPrice::alone)
        .containsExactly(onlyThird - free, onlyLow - free);
    assertThat(prices)
        .extracting(DemandPrice::dropping)
        .containsExactly(plan.total() - onlyLow, plan.total() - onlyThird)
        .allMatch(saved -> saved >= 0);
  }

  private static Passage passage(List<Integer> steps, int tempo) {
    String notes =
        steps.stream()
            .map(step -> SCALE.get(step) + "/1")
            .collect(java.util.stream.Collectors.joining(" "));
    return Music.on("violin").tempo("quarter=" + tempo).notes(notes);
  }

  private static boolean comfortable(Plan plan) {
    return !ComfortableTempo.of(plan, SPEED).exceeded();
  }
}
