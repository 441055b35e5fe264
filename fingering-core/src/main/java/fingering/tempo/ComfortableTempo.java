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
        level, plan.passage().tempo(), new Limits(plan.passage(), plan.grips(), level).byMeasure());
  }

  /**
   * What makes a measure of a plan go at ease only below a multiple of the tempi marked, in score
   * order, the tightest of each measure. It tells less than {@link #byMeasure}, and is quicker.
   *
   * @param factor the multiple, 1 for the tempi as marked
   */
  public static ImmutableList<Limit> under(Plan plan, Level level, double factor) {
    return new Limits(plan.passage(), plan.grips(), level).under(factor);
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
