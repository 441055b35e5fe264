package fingering.verdict;

import com.google.common.collect.ImmutableList;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.tempo.ComfortableTempo;
import fingering.tempo.PlayerSpeed;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Which of several plans a teacher would hand to this player, and why.
 *
 * <p>The safest plan is the one with the lowest cost, because the weights say what is hard for this
 * player. A plan that is comfortable at the planned tempo comes before one that is not. Plans of
 * equal rank are taken in their order (common practice, no source).
 *
 * @param plan the plan to take
 * @param rival the plan to weigh it against: the first one compared, or the next best if the first
 *     one is taken; empty if there is only one, or all are fingered alike
 * @param reason why the plan is taken
 * @param close whether the rival is nearly as good
 * @param differences where the plan differs from the rival, in score order
 */
public record Verdict(
    Plan plan,
    Optional<Plan> rival,
    Reason reason,
    boolean close,
    ImmutableList<Difference> differences) {

  /** The reasons to take a plan. */
  public enum Reason {
    /** There is no other plan. */
    ONLY,
    /** The other plans finger every note alike. */
    ALIKE,
    /** The rival needs at least as many shifts, crossings and fourth fingers, and is no faster. */
    RIVAL_SAVES_NOTHING,
    /** Only this plan is comfortable at the planned tempo. */
    TEMPO,
    /** The rival is better in something, but harder as a whole. */
    EASIER
  }

  /** Below this part of the cost of the measures that differ, two plans are nearly as good. */
  private static final double CLOSE = 0.05;

  /** The verdict on compared plans for a player of a speed. */
  public static Verdict of(Comparison comparison, PlayerSpeed speed) {
    List<Plan> plans = comparison.plans();
    List<Plan> comfortable = plans.stream().filter(plan -> !exceeded(plan, speed)).toList();
    Plan best = cheapest(comfortable.isEmpty() ? plans : comfortable);
    List<Plan> others = plans.stream().filter(plan -> !best.sameFingering(plan)).toList();
    if (others.isEmpty()) {
      return new Verdict(
          best,
          Optional.empty(),
          plans.size() == 1 ? Reason.ONLY : Reason.ALIKE,
          false,
          ImmutableList.of());
    }
    Plan first = plans.get(0);
    Plan rival = others.contains(first) ? first : cheapest(others);
    Reason reason = reason(best, rival, speed);
    return new Verdict(
        best,
        Optional.of(rival),
        reason,
        reason != Reason.RIVAL_SAVES_NOTHING && close(best, rival),
        Difference.of(best, rival));
  }

  /** The figures of the plan, less those of the rival. All are 0 if there is no rival. */
  public PlanFigures change() {
    return PlanFigures.of(plan).minus(PlanFigures.of(rival.orElse(plan)));
  }

  private static Reason reason(Plan best, Plan rival, PlayerSpeed speed) {
    boolean faster = factor(rival, speed) > factor(best, speed);
    if (PlanFigures.of(rival).minus(PlanFigures.of(best)).nowhereBelowZero() && !faster) {
      return Reason.RIVAL_SAVES_NOTHING;
    }
    return exceeded(rival, speed) && !exceeded(best, speed) ? Reason.TEMPO : Reason.EASIER;
  }

  private static Plan cheapest(List<Plan> plans) {
    return plans.stream().min(Comparator.comparingLong(Plan::total)).orElseThrow();
  }

  private static boolean exceeded(Plan plan, PlayerSpeed speed) {
    return ComfortableTempo.of(plan, speed).exceeded();
  }

  private static double factor(Plan plan, PlayerSpeed speed) {
    return ComfortableTempo.of(plan, speed).factor().orElse(Double.POSITIVE_INFINITY);
  }

  private static boolean close(Plan best, Plan rival) {
    return Math.abs(rival.total() - best.total()) <= CLOSE * rival.total();
  }
}
