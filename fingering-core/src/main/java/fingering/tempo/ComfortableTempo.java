package fingering.tempo;

import com.google.common.collect.ImmutableList;
import fingering.music.Tempo;
import fingering.plan.Plan;
import java.util.Comparator;
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
public record ComfortableTempo(Level level, Tempo marked, ImmutableList<Limit> byMeasure) {

  /** Reckons it for a plan. */
  public static ComfortableTempo of(Plan plan, Level level) {
    return new ComfortableTempo(
        level,
        plan.passage().tempo(),
        MeasureLimits.of(plan, level).under(Double.POSITIVE_INFINITY));
  }

  /** The multiple of the tempi marked; empty where nothing limits it. */
  public OptionalDouble factor() {
    return byMeasure.stream().mapToDouble(Limit::factor).min();
  }

  /**
   * The tempo with which to begin, rounded down; empty where nothing limits it, or where it lies
   * above every metronome mark.
   */
  public Optional<Tempo> tempo() {
    return factor().isEmpty() ? Optional.empty() : Metronome.atMost(marked, factor().getAsDouble());
  }

  /** Whether the tempo marked is faster than is at ease. */
  public boolean exceeded() {
    return factor().orElse(1) < 1;
  }

  /** What limits the most, the tightest first, one of each measure. */
  public ImmutableList<Limit> tightest(int howMany) {
    return byMeasure.stream()
        .sorted(Comparator.comparingDouble(Limit::factor))
        .limit(howMany)
        .collect(ImmutableList.toImmutableList());
  }
}
