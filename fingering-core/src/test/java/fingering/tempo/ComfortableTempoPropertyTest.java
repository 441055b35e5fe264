package fingering.tempo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Frame;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.music.RandomMusic;
import fingering.music.Tempo;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.Planner;
import fingering.scoring.rules.StandardRules;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Properties of the comfortable tempo of every plan, on random music. */
class ComfortableTempoPropertyTest {
  private static final ImmutableList<String> INSTRUMENTS =
      ImmutableList.of("violin", "viola", "cello", "bass");
  private static final ImmutableList<Integer> LOWEST = ImmutableList.of(55, 48, 36, 28);

  /** Starts are whole microseconds, and the shortest notes here last some ten thousand of them. */
  private static final double ROUNDING = 1e-3;

  private static final PlayerSpeed LEVEL = PlayerSpeed.named("intermediate");

  private static Passage passage(int seed, int which, int notes, String tempo) {
    int lowest = LOWEST.get(which);
    return Music.on(INSTRUMENTS.get(which))
        .tempo(tempo)
        .notes(new RandomMusic(seed).withDoubleStops(notes, lowest, lowest + 24));
  }

  private static Plan plan(Passage passage) {
    return Planner.of(passage, StandardRules.commonPractice()).plan(Brief.free("free"));
  }

  private static double factor(Plan plan) {
    OptionalDouble factor = ComfortableTempo.of(plan, LEVEL).factor();
    return factor.orElse(Double.POSITIVE_INFINITY);
  }

  @Property(tries = 60)
  void aFasterTempoDividesTheFactor(
      @ForAll int seed,
      @ForAll @IntRange(min = 0, max = 3) int which,
      @ForAll @IntRange(min = 2, max = 24) int notes,
      @ForAll @IntRange(min = 30, max = 300) int percent) {
    Plan plan = plan(passage(seed, which, notes, "quarter=80"));
    String faster = "quarter=" + BigDecimal.valueOf(80L * percent, 2);
    Plan scaled = Studies.of(passage(seed, which, notes, faster), plan.grips());
    assertThat(factor(scaled) * percent / 100).isCloseTo(factor(plan), within(factor(plan) / 1000));
    assertThat(ComfortableTempo.of(scaled, LEVEL).marked()).isEqualTo(Tempo.parse(faster));
  }

  /** The moments with a rest inserted before one of them. */
  private static Passage rested(Passage passage, int at, long rest) {
    List<Moment> moments = new ArrayList<>();
    for (int m = 0; m < passage.moments().size(); m++) {
      Moment moment = passage.moments().get(m);
      moments.add(
          m < at
              ? moment
              : new Moment(
                  moment.starting(),
                  moment.held(),
                  moment.startMicros() + rest,
                  moment.soundMicros(),
                  moment.restMicros() + (m == at ? rest : 0),
                  moment.slurred(),
                  moment.grace(),
                  moment.pizzicato()));
    }
    return new Passage(
        passage.title(),
        passage.partId(),
        passage.partName(),
        passage.instrument(),
        passage.tempi(),
        passage.measures(),
        ImmutableList.copyOf(moments),
        passage.remarks());
  }

  @Property(tries = 60)
  void anotherRestNeverLowersTheTempo(
      @ForAll int seed,
      @ForAll @IntRange(min = 0, max = 3) int which,
      @ForAll @IntRange(min = 3, max = 24) int notes,
      @ForAll @IntRange(min = 1, max = 23) int at,
      @ForAll @IntRange(min = 1, max = 3_000_000) int rest) {
    Plan plan = plan(passage(seed, which, notes, "quarter=80"));
    Plan rested = Studies.of(rested(plan.passage(), Math.min(at, notes - 1), rest), plan.grips());
    assertThat(factor(rested)).isGreaterThanOrEqualTo(factor(plan) * (1 - ROUNDING));
  }

  /** The grips with a hand that keeps its frame from one moment on: one shift less, or none. */
  private static List<Grip> withoutShiftTo(List<Grip> grips, int at) {
    Frame stays = grips.get(at - 1).frame();
    Frame leaves = grips.get(at).frame();
    List<Grip> still = new ArrayList<>(grips);
    for (int m = at; m < grips.size() && grips.get(m).frame().equals(leaves); m++) {
      Grip grip = grips.get(m);
      still.set(m, new Grip(grip.placements(), stays, grip.divided()));
    }
    return still;
  }

  /** With the same strings and fingers, removing the last shift never lowers the tempo. */
  @Property(tries = 60)
  void removingTheLastShiftNeverLowersTheTempo(
      @ForAll int seed,
      @ForAll @IntRange(min = 0, max = 3) int which,
      @ForAll @IntRange(min = 2, max = 24) int notes) {
    Plan plan = plan(passage(seed, which, notes, "quarter=80"));
    int last = plan.grips().size() - 1;
    while (last > 1 && plan.grips().get(last - 1).frame().equals(plan.grips().get(last).frame())) {
      last--;
    }
    Plan still = Studies.of(plan.passage(), withoutShiftTo(plan.grips(), last));
    assertThat(factor(still)).isGreaterThanOrEqualTo(factor(plan) * (1 - ROUNDING));
  }

  @Property(tries = 60)
  void aFasterLevelNeverLowersTheTempo(
      @ForAll int seed,
      @ForAll @IntRange(min = 0, max = 3) int which,
      @ForAll @IntRange(min = 2, max = 24) int notes) {
    Plan plan = plan(passage(seed, which, notes, "quarter=80"));
    assertThat(PlayerSpeed.all())
        .extracting(level -> -ComfortableTempo.of(plan, level).factor().orElseThrow())
        .isSorted();
  }

  @Property(tries = 40)
  void theTempoIsThatOfTheTightestMeasureAndEachMeasureOccursOnce(
      @ForAll int seed, @ForAll @IntRange(min = 2, max = 24) int notes) {
    ComfortableTempo tempo =
        ComfortableTempo.of(plan(passage(seed, 0, notes, "quarter=80")), LEVEL);
    assertThat(tempo.byMeasure())
        .extracting(limit -> limit.place().measureIndex())
        .isSorted()
        .doesNotHaveDuplicates();
    assertThat(tempo.tightest(1).get(0).factor()).isEqualTo(tempo.factor().orElseThrow());
  }
}
