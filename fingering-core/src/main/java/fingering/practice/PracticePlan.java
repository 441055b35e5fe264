package fingering.practice;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.demand.MeasureSpan;
import fingering.music.Tempo;
import fingering.plan.Plan;
import fingering.tables.FingeringException;
import fingering.tempo.ComfortableTempo;
import fingering.tempo.PlayerSpeed;
import fingering.tempo.TempoLimit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The practice of a plan until the day it is played: a ladder for the whole, and one of their own
 * for the measures that limit it.
 *
 * @param plan the plan
 * @param level how quick the player is
 * @param whole the ladder of the whole
 * @param limits the ladders of measures whose steps shrink before the goal, in score order
 */
public record PracticePlan(
    Plan plan, PlayerSpeed level, TempoLadder whole, ImmutableList<LimitLadder> limits) {
  /**
   * Measures that get a ladder of their own; who practises more places by themselves, none well.
   */
  private static final int MOST = 3;

  private static final int DECIMALS = 2;
  private static final double FASTEST = 1000;

  /**
   * What is asked for.
   *
   * @param from the tempo that is clean where the journal tells none
   * @param goal the tempo to be reached
   * @param today the first day, or, where the journal has it, the last one practised
   * @param by the day on which it is played
   * @param rest days of the week without practice
   * @param metronome what the metronome can be set to
   */
  public record Request(
      Optional<Tempo> from,
      Tempo goal,
      LocalDate today,
      LocalDate by,
      ImmutableSet<DayOfWeek> rest,
      MetronomeScale metronome) {}

  /**
   * Makes it.
   *
   * @throws FingeringException if the request cannot be met; the message is one sentence
   */
  public static PracticePlan of(Plan plan, PlayerSpeed level, Request request, Journal journal) {
    ComfortableTempo comfort = ComfortableTempo.of(plan, level);
    Tempo clean =
        journal
            .clean(MeasureSpan.WHOLE)
            .or(request::from)
            .orElseThrow(
                () ->
                    new FingeringException(
                        "No clean tempo is known to start from: give one with --from, or write it"
                            + " into the journal."));
    Scaled scaled = new Scaled(comfort.marked(), request.goal());
    boolean done = journal.practised(request.today()) && request.today().isBefore(request.by());
    LocalDate first = done ? request.today().plusDays(1) : request.today();
    TempoLadder whole =
        TempoLadder.of(
            goal(request, first, clean),
            size(request, comfort.factor().stream().boxed().findFirst(), scaled));
    ImmutableList.Builder<LimitLadder> limits = ImmutableList.builder();
    for (List<TempoLimit> together : together(comfort, scaled, request.goal())) {
      TempoLimit tightest =
          together.stream().min(Comparator.comparingDouble(TempoLimit::factor)).orElseThrow();
      MeasureSpan span =
          MeasureSpan.of(
              together.get(0).first().measure(),
              Collections.max(together, Comparator.comparingInt(PracticePlan::end))
                  .last()
                  .measure());
      limits.add(
          new LimitLadder(
              span,
              tightest.text(),
              scaled.times(tightest.factor()).orElseThrow(),
              TempoLadder.leading(
                  goal(request, first, journal.clean(span).orElse(clean)),
                  size(request, Optional.of(tightest.factor()), scaled))));
    }
    return new PracticePlan(plan, level, whole, limits.build());
  }

  private static LadderRequest goal(Request request, LocalDate first, Tempo clean) {
    return new LadderRequest(clean, request.goal(), first, request.by(), request.rest());
  }

  private static StepSize size(Request request, Optional<Double> factor, Scaled scaled) {
    return new StepSize(request.metronome(), factor.flatMap(scaled::times));
  }

  /** Multiples of the tempo at the beginning, in the unit of the goal. */
  private record Scaled(Tempo marked, Tempo goal) {
    Optional<Tempo> times(double factor) {
      double perMinute =
          marked.quartersPerMinute().doubleValue() / goal.unit().quarters().doubleValue() * factor;
      BigDecimal told = BigDecimal.valueOf(perMinute).setScale(DECIMALS, RoundingMode.DOWN);
      return perMinute >= FASTEST || told.signum() == 0
          ? Optional.empty()
          : Optional.of(new Tempo(goal.unit(), told));
    }
  }

  /** What limits before the goal, measures that touch drawn together. */
  private static List<List<TempoLimit>> together(
      ComfortableTempo comfort, Scaled scaled, Tempo goal) {
    List<TempoLimit> limiting =
        comfort.tightest(MOST).stream()
            .filter(limit -> shrinks(limit, scaled, goal))
            .sorted(Comparator.comparingInt(limit -> limit.first().measureIndex()))
            .toList();
    List<List<TempoLimit>> together = new ArrayList<>();
    for (TempoLimit limit : limiting) {
      List<TempoLimit> last = together.isEmpty() ? List.of() : together.get(together.size() - 1);
      boolean next =
          last.stream().anyMatch(before -> end(before) + 1 >= limit.first().measureIndex());
      if (next) {
        last.add(limit);
      } else {
        together.add(new ArrayList<>(List.of(limit)));
      }
    }
    return together;
  }

  private static int end(TempoLimit limit) {
    return limit.last().measureIndex();
  }

  private static boolean shrinks(TempoLimit limit, Scaled scaled, Tempo goal) {
    StepSize size = new StepSize(MetronomeScale.EXACT, scaled.times(limit.factor()));
    return size.smallerFrom()
        .filter(from -> from.perMinute().compareTo(goal.perMinute()) < 0)
        .isPresent();
  }
}
