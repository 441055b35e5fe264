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

/** What holds of every ladder. */
class TempoLadderPropertyTest {
  private static final LocalDate FIRST = LocalDate.of(2026, 11, 2);

  /** A ladder that is asked for. */
  record Asked(LadderRequest request, StepSize size) {
    TempoLadder ladder() {
      return TempoLadder.of(request, size);
    }

    /** The same with the first day missed, and nothing played. */
    Asked missed() {
      return new Asked(
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
  Arbitrary<Asked> asked() {
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
                new Asked(
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

  private static BigDecimal figure(Tempo tempo) {
    return tempo.perMinute();
  }

  @Property
  void everyDayStartsStrictlyBelowTheLastCleanTempo(@ForAll("asked") Asked asked) {
    BigDecimal clean = figure(asked.request().clean());
    for (PracticeDay day : played(asked.ladder())) {
      assertThat(figure(day.start())).isLessThan(clean);
      clean = figure(day.top());
    }
  }

  @Property
  void noStepPassesTheGoal(@ForAll("asked") Asked asked) {
    for (PracticeDay day : played(asked.ladder())) {
      assertThat(figure(day.top())).isLessThanOrEqualTo(figure(asked.request().goal()));
    }
  }

  @Property
  void ladderEndsAtTheGoalOrAtTheTempoItAnnounced(@ForAll("asked") Asked asked) {
    TempoLadder ladder = asked.ladder();
    PracticeDay day = ladder.days().get(ladder.days().size() - 1);
    assertThat(day.kind()).isEqualTo(PracticeDay.Kind.DAY);
    assertThat(day.top()).isEqualTo(ladder.reachable());
    assertThat(ladder.reachesGoal())
        .isEqualTo(figure(ladder.reachable()).compareTo(figure(asked.request().goal())) == 0);
  }

  /** Nothing is ever asked for that is more than the smallest setting and the small share above. */
  @Property
  void noDayAsksForMoreThanOneStepBeyondWhatWasClean(@ForAll("asked") Asked asked) {
    StepSize size = asked.size();
    Tempo clean = asked.request().clean();
    for (PracticeDay day : played(asked.ladder())) {
      BigDecimal share = figure(clean).multiply(BigDecimal.ONE.add(size.share(clean)));
      BigDecimal most = share.max(figure(size.metronome().above(clean)));
      assertThat(figure(day.top())).isLessThanOrEqualTo(most);
      for (int i = 1; i < day.steps().size() && day.kind() == PracticeDay.Kind.PRACTICE; i++) {
        Tempo from = day.steps().get(i - 1);
        BigDecimal far = figure(from).multiply(BigDecimal.ONE.add(size.share(from)));
        assertThat(figure(day.steps().get(i)))
            .isLessThanOrEqualTo(far.max(figure(size.metronome().above(from))));
      }
      clean = day.top();
    }
  }

  @Property
  void aMissedDayNeitherRaisesTheNextNorPromisesMore(@ForAll("asked") Asked asked) {
    if (!asked.request().first().isBefore(asked.request().by())) {
      return;
    }
    TempoLadder before = asked.ladder();
    TempoLadder after = asked.missed().ladder();
    assertThat(figure(after.reachable())).isLessThanOrEqualTo(figure(before.reachable()));
    PracticeDay next = played(after).get(0);
    BigDecimal clean = figure(asked.request().clean());
    assertThat(figure(next.start())).isLessThan(clean);
    BigDecimal share = BigDecimal.ONE.add(asked.size().share(asked.request().clean()));
    assertThat(figure(next.top()))
        .isLessThanOrEqualTo(
            clean
                .multiply(share)
                .max(figure(asked.size().metronome().above(asked.request().clean()))));
  }

  @Property
  void fullTempoComesMoreOftenAsTheDayComesNearer(@ForAll("asked") Asked asked) {
    LocalDate by = asked.request().by();
    TempoLadder ladder = asked.ladder();
    if (asked.request().rest().isEmpty() && ladder.days().size() > 28) {
      assertThat(full(ladder, by.minusDays(7)))
          .isGreaterThanOrEqualTo(full(ladder, by.minusDays(14)));
      assertThat(full(ladder, by.minusDays(14)))
          .isGreaterThanOrEqualTo(full(ladder, by.minusDays(21)));
    }
  }

  private static int full(TempoLadder ladder, LocalDate from) {
    return ladder.days().stream()
        .filter(day -> !day.date().isBefore(from) && day.date().isBefore(from.plusDays(7)))
        .mapToInt(PracticeDay::full)
        .sum();
  }

  @Property
  void ladderIsTheSameForTheSameRequest(@ForAll("asked") Asked asked) {
    assertThat(asked.ladder()).isEqualTo(asked.ladder());
    assertThat(Optional.of(asked.ladder().days().size()))
        .contains((int) (asked.request().by().toEpochDay() - FIRST.toEpochDay()) + 1);
  }
}
