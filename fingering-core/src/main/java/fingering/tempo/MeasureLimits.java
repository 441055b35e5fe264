package fingering.tempo;

import com.google.common.collect.ImmutableList;
import fingering.plan.Plan;

/**
 * What keeps each measure of a plan from going faster at ease. Only what is asked for is put into
 * words, so that it is quicker than {@link ComfortableTempo} where little is.
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
   * The tightest limit of each measure that goes at ease only below a multiple of the tempi marked,
   * in score order.
   *
   * @param factor the multiple, 1 for the tempi as marked
   */
  public ImmutableList<TempoLimit> under(double factor) {
    return limits.under(factor);
  }

  /** How many measures these are. */
  public int count(double factor) {
    return limits.count(factor);
  }
}
