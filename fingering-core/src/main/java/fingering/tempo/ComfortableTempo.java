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
 * The highest tempo at which a plan is played at ease. It is a multiple of the tempi marked, the
 * same for the whole passage, as a tempo asked for changes them all alike.
 *
 * @param level the player's level
 * @param marked the tempo at which the passage begins
 * @param byMeasure what limits each measure most, in score order; measures that nothing limits are
 *     left out
 */
public record ComfortableTempo(
    PlayerSpeed level, Tempo marked, ImmutableList<TempoLimit> byMeasure) {
  private static final double WELL_ABOVE = 1.5;

  /** Reckons it for a plan. */
  public static ComfortableTempo of(Plan plan, PlayerSpeed level) {
    return new ComfortableTempo(
        level,
        plan.passage().tempo(),
        MeasureLimits.of(plan, level).under(Double.POSITIVE_INFINITY));
  }

  /** The multiple of the tempi marked; empty where nothing limits it. */
  public OptionalDouble factor() {
    return byMeasure.stream().mapToDouble(TempoLimit::factor).min();
  }

  /**
   * The tempo with which to begin, rounded down; empty where nothing limits it, or where it lies
   * above every metronome mark.
   */
  public Optional<Tempo> tempo() {
    return factor().isEmpty()
        ? Optional.empty()
        : MetronomeMarks.atMost(marked, factor().getAsDouble());
  }

  /** Whether the tempo marked is faster than is at ease. */
  public boolean exceeded() {
    return factor().orElse(1) < 1;
  }

  /**
   * Whether it lies so far above the tempi marked that nobody asks for its figure: half as fast
   * again at least, or without limit (common practice, no source).
   */
  public boolean wellAbove() {
    return factor().isEmpty() || wellAbove(factor().getAsDouble());
  }

  /**
   * Whether a tempo lies so far above another.
   *
   * @param factor the multiple of the other that it is, over 0
   */
  public static boolean wellAbove(double factor) {
    return factor >= WELL_ABOVE;
  }

  /**
   * The same as {@link #tightest}, for people: of runs that have a measure in common only the
   * tightest.
   */
  public ImmutableList<TempoLimit> tightestApart(int howMany) {
    List<TempoLimit> apart = new ArrayList<>();
    for (TempoLimit limit : tightest(byMeasure.size())) {
      if (apart.size() < howMany && apart.stream().noneMatch(limit::shares)) {
        apart.add(limit);
      }
    }
    return ImmutableList.copyOf(apart);
  }

  /** What limits the most, the tightest first, one of each measure. */
  public ImmutableList<TempoLimit> tightest(int howMany) {
    return byMeasure.stream()
        .sorted(Comparator.comparingDouble(TempoLimit::factor))
        .limit(howMany)
        .collect(ImmutableList.toImmutableList());
  }
}
