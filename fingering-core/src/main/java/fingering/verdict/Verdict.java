package fingering.verdict;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
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
 * @param differing the measures in which the plan differs from the rival, in score order
 */
public record Verdict(
    Plan plan,
    Optional<Plan> rival,
    Reason reason,
    boolean close,
    ImmutableList<Measure> differing) {

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

  /** A plan with its comfortable tempo, which is computed once. */
  private record Candidate(Plan plan, ComfortableTempo tempo) {
    double factor() {
      return tempo.factor().orElse(Double.POSITIVE_INFINITY);
    }
  }

  /** The verdict on compared plans for a player of a speed. */
  public static Verdict of(Comparison comparison, PlayerSpeed speed) {
    List<Candidate> all =
        comparison.plans().stream()
            .map(plan -> new Candidate(plan, ComfortableTempo.of(plan, speed)))
            .toList();
    List<Candidate> comfortable = all.stream().filter(each -> !each.tempo().exceeded()).toList();
    Candidate best = cheapest(comfortable.isEmpty() ? all : comfortable);
    List<Candidate> others =
        all.stream().filter(each -> !best.plan().sameFingering(each.plan())).toList();
    if (others.isEmpty()) {
      return new Verdict(
          best.plan(),
          Optional.empty(),
          all.size() == 1 ? Reason.ONLY : Reason.ALIKE,
          false,
          ImmutableList.of());
    }
    Candidate first = all.get(0);
    Candidate rival = best.plan().sameFingering(first.plan()) ? cheapest(others) : first;
    Reason reason = reason(best, rival);
    return new Verdict(
        best.plan(),
        Optional.of(rival.plan()),
        reason,
        reason != Reason.RIVAL_SAVES_NOTHING && close(best.plan(), rival.plan()),
        new Comparison(
                comparison.passage(),
                ImmutableList.of(best.plan(), rival.plan()),
                ImmutableList.of())
            .differingMeasures());
  }

  /** The figures of the plan, less those of the rival. All are 0 if there is no rival. */
  public PlanFigures change() {
    return PlanFigures.of(plan).minus(PlanFigures.of(rival.orElse(plan)));
  }

  private static Reason reason(Candidate best, Candidate rival) {
    PlanFigures more = PlanFigures.of(rival.plan()).minus(PlanFigures.of(best.plan()));
    if (more.nowhereBelowZero() && rival.factor() <= best.factor()) {
      return Reason.RIVAL_SAVES_NOTHING;
    }
    return rival.tempo().exceeded() && !best.tempo().exceeded() ? Reason.TEMPO : Reason.EASIER;
  }

  private static Candidate cheapest(List<Candidate> candidates) {
    return candidates.stream()
        .min(Comparator.comparingLong(each -> each.plan().total()))
        .orElseThrow();
  }

  private static boolean close(Plan best, Plan rival) {
    return Math.abs(rival.total() - best.total()) <= CLOSE * rival.total();
  }
}
