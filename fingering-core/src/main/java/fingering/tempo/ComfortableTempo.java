package fingering.tempo;

import com.google.common.collect.ImmutableList;
import fingering.music.Tempo;
import fingering.plan.Plan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The highest tempo at which a plan is comfortable for a player. It is expressed as one factor for
 * all tempi of the passage, because a player speeds up or slows down the whole passage.
 *
 * @param level the player's level
 * @param marked the tempo at which the passage begins
 * @param byMeasure the tightest limit of each measure, in score order, without measures that have
 *     none
 */
public record ComfortableTempo(
    PlayerSpeed level, Tempo marked, ImmutableList<TempoLimit> byMeasure) {
  private static final double WELL_ABOVE = 1.5;

  /** The comfortable tempo of a plan for players of a level. */
  public static ComfortableTempo of(Plan plan, PlayerSpeed level) {
    return new ComfortableTempo(
        level,
        plan.passage().tempo(),
        MeasureLimits.of(plan, level).below(Double.POSITIVE_INFINITY));
  }

  /** The comfortable tempo as a multiple of the marked tempi; empty if there is no limit. */
  public OptionalDouble factor() {
    return byMeasure.stream().mapToDouble(TempoLimit::factor).min();
  }

  /**
   * The comfortable tempo at the beginning of the passage, rounded down; empty if there is no limit
   * or it is above every metronome mark.
   */
  public Optional<Tempo> tempo() {
    return factor().isEmpty()
        ? Optional.empty()
        : MetronomeMarks.atMost(marked, factor().getAsDouble());
  }

  /** Whether the marked tempo is above the comfortable one. */
  public boolean exceeded() {
    return factor().orElse(1) < 1;
  }

  /**
   * Whether the comfortable tempo is well above the marked one: at least half as fast again, or
   * without limit. Its exact value then does not matter (common practice, no source).
   */
  public boolean wellAbove() {
    return factor().isEmpty() || wellAbove(factor().getAsDouble());
  }

  /**
   * Whether a tempo is well above another, as defined by {@link #wellAbove()}.
   *
   * @param factor the tempo as a multiple of the other, above 0
   */
  public static boolean wellAbove(double factor) {
    return factor >= WELL_ABOVE;
  }

  /**
   * The tightest limits, tightest first; of runs that have a measure in common only the tightest.
   *
   * @param most the most limits to return, 0 or more
   */
  public ImmutableList<TempoLimit> tightestDistinct(int most) {
    List<TempoLimit> distinct = new ArrayList<>();
    for (TempoLimit limit : tightest(byMeasure.size())) {
      if (distinct.size() < most && distinct.stream().noneMatch(limit::overlapsRun)) {
        distinct.add(limit);
      }
    }
    return ImmutableList.copyOf(distinct);
  }

  /**
   * The tightest limits, tightest first, at most one for each measure.
   *
   * @param most the most limits to return, 0 or more
   */
  public ImmutableList<TempoLimit> tightest(int most) {
    return byMeasure.stream()
        .sorted(Comparator.comparingDouble(TempoLimit::factor))
        .limit(most)
        .collect(ImmutableList.toImmutableList());
  }
}
