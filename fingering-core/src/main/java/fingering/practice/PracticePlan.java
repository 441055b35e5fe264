package fingering.practice;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import com.google.common.collect.Range;
import fingering.demand.MeasureSpan;
import fingering.music.Tempo;
import fingering.plan.Plan;
import fingering.tables.Choice;
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
 * The practice of a plan until the performance: a tempo ladder for the whole piece, and one for
 * each spot: measures that limit the tempo of the plan, and measures that the journal says are not
 * clean yet. The whole piece is never faster than its slowest spot (common practice, no source).
 *
 * @param plan the plan
 * @param level the speed of the player
 * @param whole the ladder of the whole piece
 * @param limits the ladders of the spots, in score order; each has the same dates as the whole
 * @param waitsFor the slowest spot if it is slower than what was clean of the whole piece, which
 *     then begins at the tempo of the spot
 * @param held whether the last entry was about a bad day of the whole piece, so that the first day
 *     brings nothing faster
 */
public record PracticePlan(
    Plan plan,
    PlayerSpeed level,
    TempoLadder whole,
    ImmutableList<LimitLadder> limits,
    Optional<LimitLadder> waitsFor,
    boolean held) {
  /** The most measures that limit the plan; nobody can practise more places well. */
  private static final int MOST = 3;

  private static final int DECIMALS = 2;
  private static final double FASTEST = 1000;

  /**
   * The request for a practice plan.
   *
   * @param from the clean tempo to start from if the journal has none
   * @param goal the tempo to reach; the ladder counts in its unit
   * @param today today's date; the ladder begins tomorrow if the journal has an entry for today
   * @param by the day of the performance
   * @param rest days of the week without practice
   * @param metronome the settings of the metronome
   */
  public record Request(
      Optional<Tempo> from,
      Tempo goal,
      LocalDate today,
      LocalDate by,
      ImmutableSet<DayOfWeek> rest,
      MetronomeScale metronome) {}

  /**
   * Creates the practice of a plan.
   *
   * @throws FingeringException if there is no clean tempo to start from, or a date or tempo is out
   *     of range; the message is one sentence
   */
  public static PracticePlan of(Plan plan, PlayerSpeed level, Request request, Journal journal) {
    ComfortableTempo comfort = ComfortableTempo.of(plan, level);
    Journal.Standing standing = journal.standing(MeasureSpan.WHOLE);
    Tempo clean =
        standing
            .clean()
            .or(request::from)
            .orElseThrow(
                () ->
                    new FingeringException(
                        "There is no clean tempo to start from: give one, or add it to the journal.",
                        Choice.START_TEMPO));
    Scaled scaled = new Scaled(comfort.marked(), request.goal());
    boolean done =
        journal.practisedWhole(request.today()) && request.today().isBefore(request.by());
    LocalDate first = done ? request.today().plusDays(1) : request.today();
    StepSize steps = stepSize(request, comfort.factor().stream().boxed().findFirst(), scaled);
    List<JournalSpots.Spot> noted = JournalSpots.of(journal, plan.passage(), clean, request.goal());
    List<Placed> spots = new ArrayList<>();
    for (JournalSpots.Spot spot : noted) {
      TempoLadder ladder =
          TempoLadder.leading(ladderRequest(request, first, spot.clean()), steps, spot.bad());
      spots.add(
          new Placed(
              spot.indices(), new LimitLadder(spot.measures(), "", Optional.empty(), ladder)));
    }
    for (List<TempoLimit> group : groups(comfort, scaled, request.goal())) {
      TempoLimit tightest =
          group.stream().min(Comparator.comparingDouble(TempoLimit::factor)).orElseThrow();
      TempoLimit end = Collections.max(group, Comparator.comparingInt(PracticePlan::lastMeasure));
      MeasureSpan span = MeasureSpan.of(group.get(0).first().measure(), end.last().measure());
      Range<Integer> indices = Range.closed(group.get(0).first().measureIndex(), lastMeasure(end));
      Journal.Standing own = journal.standing(span);
      Tempo slowest = own.clean().orElse(clean);
      boolean bad = own.own() ? own.bad() : standing.bad();
      for (JournalSpots.Spot spot : noted) {
        slowest = spot.overlaps(indices) ? slower(slowest, spot.clean()) : slowest;
        bad |= spot.overlaps(indices) && spot.bad();
      }
      // A spot of the journal within these measures is practised with them.
      spots.removeIf(spot -> indices.encloses(spot.indices()));
      spots.add(
          new Placed(
              indices,
              new LimitLadder(
                  span,
                  tightest.text(),
                  scaled.times(tightest.factor()),
                  TempoLadder.leading(
                      ladderRequest(request, first, slowest),
                      stepSize(request, Optional.of(tightest.factor()), scaled),
                      bad))));
    }
    ImmutableList<LimitLadder> ladders =
        spots.stream()
            .sorted(Comparator.comparingInt(spot -> spot.indices().lowerEndpoint()))
            .map(Placed::ladder)
            .collect(ImmutableList.toImmutableList());
    Optional<LimitLadder> slowest =
        ladders.stream()
            .min(Comparator.comparing(spot -> spot.ladder().request().clean().perMinute()));
    LadderRequest own = ladderRequest(request, first, clean);
    Optional<LimitLadder> waitsFor =
        slowest.filter(spot -> isBelow(spot.ladder().request().clean(), own));
    return new PracticePlan(
        plan,
        level,
        TempoLadder.behind(
            waitsFor.map(spot -> spot.ladder().request()).orElse(own),
            steps,
            standing.bad(),
            ladders.stream().map(LimitLadder::ladder).toList()),
        ladders,
        waitsFor,
        standing.bad());
  }

  /**
   * A spot and the indices of its measures in the part.
   *
   * @param indices the indices
   * @param ladder its ladder
   */
  private record Placed(Range<Integer> indices, LimitLadder ladder) {}

  private static Tempo slower(Tempo one, Tempo other) {
    return one.quartersPerMinute().compareTo(other.quartersPerMinute()) <= 0 ? one : other;
  }

  /** Returns whether a tempo is below what is clean, and below the goal. */
  private static boolean isBelow(Tempo tempo, LadderRequest whole) {
    return tempo.perMinute().compareTo(whole.clean().perMinute()) < 0
        && tempo.perMinute().compareTo(whole.goal().perMinute()) < 0;
  }

  private static LadderRequest ladderRequest(Request request, LocalDate first, Tempo clean) {
    return new LadderRequest(clean, request.goal(), first, request.by(), request.rest());
  }

  private static StepSize stepSize(Request request, Optional<Double> factor, Scaled scaled) {
    return new StepSize(request.metronome(), factor.flatMap(scaled::times));
  }

  /**
   * Multiplies the tempo at the beginning, in the unit of the goal.
   *
   * @param marked the tempo at the beginning
   * @param goal the goal
   */
  private record Scaled(Tempo marked, Tempo goal) {
    /** Returns the product, rounded down; empty if no metronome goes so fast or so slow. */
    Optional<Tempo> times(double factor) {
      double perMinute =
          marked.quartersPerMinute().doubleValue() / goal.unit().quarters().doubleValue() * factor;
      BigDecimal rounded = BigDecimal.valueOf(perMinute).setScale(DECIMALS, RoundingMode.DOWN);
      return perMinute >= FASTEST || rounded.signum() == 0
          ? Optional.empty()
          : Optional.of(new Tempo(goal.unit(), rounded));
    }
  }

  /** Returns the limits below the goal, in score order, with adjacent measures in one group. */
  private static List<List<TempoLimit>> groups(
      ComfortableTempo comfort, Scaled scaled, Tempo goal) {
    List<TempoLimit> limiting =
        comfort.tightest(MOST).stream()
            .filter(limit -> shrinks(limit, scaled, goal))
            .sorted(Comparator.comparingInt(limit -> limit.first().measureIndex()))
            .toList();
    List<List<TempoLimit>> groups = new ArrayList<>();
    for (TempoLimit limit : limiting) {
      List<TempoLimit> previous = groups.isEmpty() ? List.of() : groups.get(groups.size() - 1);
      boolean adjacent =
          previous.stream()
              .anyMatch(before -> lastMeasure(before) + 1 >= limit.first().measureIndex());
      if (adjacent) {
        previous.add(limit);
      } else {
        groups.add(new ArrayList<>(List.of(limit)));
      }
    }
    return groups;
  }

  private static int lastMeasure(TempoLimit limit) {
    return limit.last().measureIndex();
  }

  /** Returns whether the steps of a limit become smaller before the goal. */
  private static boolean shrinks(TempoLimit limit, Scaled scaled, Tempo goal) {
    StepSize size = new StepSize(MetronomeScale.EXACT, scaled.times(limit.factor()));
    return size.smallerFrom()
        .filter(from -> from.perMinute().compareTo(goal.perMinute()) < 0)
        .isPresent();
  }
}
