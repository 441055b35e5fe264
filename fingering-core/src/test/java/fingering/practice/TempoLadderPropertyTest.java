package fingering.practice;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableSet;
import fingering.music.Tempo;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Invariants of all tempo ladders. */
class TempoLadderPropertyTest {
  private static final LocalDate FIRST = LocalDate.of(2026, 11, 2);

  /** The input of a ladder. */
  record Input(LadderRequest request, StepSize size) {
    TempoLadder ladder() {
      return TempoLadder.of(request, size);
    }

    /** Returns the same input after a missed first day. */
    Input missed() {
      return new Input(
          new LadderRequest(
              request.clean(),
              request.goal(),
              request.first().plusDays(1),
              request.by(),
              request.rest()),
          size);
    }
  }

  @Provide
  Arbitrary<Input> input() {
    Arbitrary<BigDecimal> tempi =
        Arbitraries.integers().between(100, 3000).map(tenths -> BigDecimal.valueOf(tenths, 1));
    Arbitrary<List<String>> units =
        Arbitraries.of("quarter", "half", "dotted-quarter", "eighth").list().ofSize(1);
    Arbitrary<ImmutableSet<DayOfWeek>> rest =
        Arbitraries.of(DayOfWeek.class).set().ofMaxSize(3).map(ImmutableSet::copyOf);
    return Combinators.combine(
            tempi,
            tempi,
            tempi.optional(),
            units,
            rest,
            Arbitraries.integers().between(0, 90),
            Arbitraries.of(MetronomeScale.class))
        .as(
            (clean, goal, comfort, unit, free, days, metronome) ->
                new Input(
                    new LadderRequest(
                        tempo(unit, clean), tempo(unit, goal), FIRST, FIRST.plusDays(days), free),
                    new StepSize(metronome, comfort.map(one -> tempo(unit, one)))));
  }

  private static Tempo tempo(List<String> unit, BigDecimal perMinute) {
    return Tempo.parse(unit.get(0) + "=" + perMinute.toPlainString());
  }

  private static List<PracticeDay> played(TempoLadder ladder) {
    return ladder.days().stream().filter(day -> day.kind() != PracticeDay.Kind.REST).toList();
  }

  private static BigDecimal perMinute(Tempo tempo) {
    return tempo.perMinute();
  }

  @Property
  void everyDayStartsStrictlyBelowTheLastCleanTempo(@ForAll("input") Input input) {
    BigDecimal clean = perMinute(input.request().clean());
    for (PracticeDay day : played(input.ladder())) {
      assertThat(perMinute(day.start())).isLessThan(clean);
      clean = perMinute(day.top());
    }
  }

  @Property
  void noStepIsAboveTheGoal(@ForAll("input") Input input) {
    for (PracticeDay day : played(input.ladder())) {
      assertThat(perMinute(day.top())).isLessThanOrEqualTo(perMinute(input.request().goal()));
    }
  }

  @Property
  void ladderEndsAtTheReachableTempo(@ForAll("input") Input input) {
    TempoLadder ladder = input.ladder();
    PracticeDay day = ladder.days().get(ladder.days().size() - 1);
    assertThat(day.kind()).isEqualTo(PracticeDay.Kind.DAY);
    assertThat(day.top()).isEqualTo(ladder.reachable());
    assertThat(ladder.reachesGoal())
        .isEqualTo(perMinute(ladder.reachable()).compareTo(perMinute(input.request().goal())) == 0);
  }

  /** A step is at most its share of the tempo, or one setting of the metronome. */
  @Property
  void noDayGoesMoreThanOneStepAboveTheLastCleanTempo(@ForAll("input") Input input) {
    StepSize size = input.size();
    Tempo clean = input.request().clean();
    for (PracticeDay day : played(input.ladder())) {
      BigDecimal share = perMinute(clean).multiply(BigDecimal.ONE.add(size.share(clean)));
      BigDecimal most = share.max(perMinute(size.metronome().above(clean)));
      assertThat(perMinute(day.top())).isLessThanOrEqualTo(most);
      for (int i = 1; i < day.steps().size() && day.kind() == PracticeDay.Kind.PRACTICE; i++) {
        Tempo from = day.steps().get(i - 1);
        BigDecimal far = perMinute(from).multiply(BigDecimal.ONE.add(size.share(from)));
        assertThat(perMinute(day.steps().get(i)))
            .isLessThanOrEqualTo(far.max(perMinute(size.metronome().above(from))));
      }
      clean = day.top();
    }
  }

  @Property
  void missedDayRaisesNeitherTheNextDayNorTheReachableTempo(@ForAll("input") Input input) {
    if (!input.request().first().isBefore(input.request().by())) {
      return;
    }
    TempoLadder before = input.ladder();
    TempoLadder after = input.missed().ladder();
    assertThat(perMinute(after.reachable())).isLessThanOrEqualTo(perMinute(before.reachable()));
    PracticeDay next = played(after).get(0);
    BigDecimal clean = perMinute(input.request().clean());
    assertThat(perMinute(next.start())).isLessThan(clean);
    BigDecimal share = BigDecimal.ONE.add(input.size().share(input.request().clean()));
    assertThat(perMinute(next.top()))
        .isLessThanOrEqualTo(
            clean
                .multiply(share)
                .max(perMinute(input.size().metronome().above(input.request().clean()))));
  }

  @Property
  void runThroughsBecomeMoreFrequent(@ForAll("input") Input input) {
    LocalDate by = input.request().by();
    TempoLadder ladder = input.ladder();
    if (input.request().rest().isEmpty() && ladder.days().size() > 28) {
      assertThat(runThroughs(ladder, by.minusDays(7)))
          .isGreaterThanOrEqualTo(runThroughs(ladder, by.minusDays(14)));
      assertThat(runThroughs(ladder, by.minusDays(14)))
          .isGreaterThanOrEqualTo(runThroughs(ladder, by.minusDays(21)));
    }
  }

  private static int runThroughs(TempoLadder ladder, LocalDate from) {
    return ladder.days().stream()
        .filter(day -> !day.date().isBefore(from) && day.date().isBefore(from.plusDays(7)))
        .mapToInt(PracticeDay::runThroughs)
        .sum();
  }

  @Property
  void sameInputGivesTheSameLadder(@ForAll("input") Input input) {
    assertThat(input.ladder()).isEqualTo(input.ladder());
    assertThat(Optional.of(input.ladder().days().size()))
        .contains((int) (input.request().by().toEpochDay() - FIRST.toEpochDay()) + 1);
  }
}
