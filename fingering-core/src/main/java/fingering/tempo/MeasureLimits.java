package fingering.tempo;

import com.google.common.collect.ImmutableList;
import fingering.plan.Plan;

/**
 * The tightest tempo limit of each measure of a plan. Descriptions are written only for the limits
 * requested, so if few are needed this is faster than {@link ComfortableTempo}.
 */
public final class MeasureLimits {
  private final PlayerSpeed level;
  private final TempoLimitFinder limits;

  private MeasureLimits(PlayerSpeed level, TempoLimitFinder limits) {
    this.level = level;
    this.limits = limits;
  }

  /** Finds the limits of a plan for players of a level. */
  public static MeasureLimits of(Plan plan, PlayerSpeed level) {
    return new MeasureLimits(
        level, new TempoLimitFinder(plan.passage(), plan.grips(), level).find());
  }

  /** The level of the players. */
  public PlayerSpeed level() {
    return level;
  }

  /**
   * The tightest limit of each measure whose comfortable tempo is below a multiple of the marked
   * tempi, in score order.
   *
   * @param factor the multiple, 1 for the marked tempi
   */
  public ImmutableList<TempoLimit> below(double factor) {
    return limits.below(factor);
  }

  /** The number of limits that {@link #below} returns. */
  public int countBelow(double factor) {
    return limits.countBelow(factor);
  }
}
