package fingering.lesson;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.demand.AllowPositions;
import fingering.demand.Demand;
import fingering.demand.DemandParser;
import fingering.demand.MeasureSpan;
import fingering.plan.Alternative;
import fingering.plan.Brief;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.plan.PlanComparer;
import fingering.search.Cancellation;
import fingering.tables.FingeringException;
import fingering.tables.Position;

/**
 * Makes the plans of a lesson. All plans come from one planner, so a second plan of the same music
 * costs little. Thread-safe.
 *
 * @param comparer makes the plans; it has no demands of its own
 * @param parser reads the demands of plans
 */
public record LessonPlanner(PlanComparer comparer, DemandParser parser) {

  /** A copy whose searches can be cancelled. */
  public LessonPlanner withCancellation(Cancellation cancellation) {
    return new LessonPlanner(comparer.withCancellation(cancellation), parser);
  }

  /**
   * The plans that a teacher compares anyway: first position, the upper position, and partly there.
   *
   * @throws fingering.plan.InfeasibleBriefException if there is none
   */
  public Comparison usual() {
    return comparer.comparePositions(false);
  }

  /**
   * A plan of the lesson.
   *
   * @throws fingering.plan.InfeasibleBriefException if no plan meets its demands
   * @throws FingeringException if a demand does not fit the music; the message is one sentence
   */
  public Plan plan(LessonPlan wanted) {
    ImmutableList<Demand> demands = wanted.brief(parser).demands();
    PlanName name = wanted.choose().map(PlanName::parse).orElse(PlanName.FREE);
    if (name.isFree()) {
      return comparer.plan(Brief.free(wanted.name()).withDemands(demands));
    }
    // The usual plans begin in the allowed positions, but leave them where they must.
    ImmutableSet<Position> allowed =
        demands.stream()
            .filter(LessonPlanner::allowsThroughout)
            .findFirst()
            .map(demand -> ((AllowPositions) demand).positions())
            .orElse(ImmutableSet.of());
    return name.plan(
            comparer
                .withAllowed(allowed)
                .withDemands(
                    demands.stream()
                        .filter(demand -> !allowsThroughout(demand))
                        .collect(ImmutableList.toImmutableList())),
            Brief.free(wanted.name()))
        .withName(wanted.name());
  }

  private static boolean allowsThroughout(Demand demand) {
    return demand instanceof AllowPositions in && in.span().equals(MeasureSpan.WHOLE);
  }

  /**
   * The best fingerings of a moment, each with the plan that it leads to, best first.
   *
   * @param plan a plan of this planner
   * @param moment the index of the moment in the passage, from 0
   * @param k the most fingerings, from 1
   * @throws FingeringException if the passage does not have that moment
   */
  public ImmutableList<Alternative> alternatives(Plan plan, int moment, int k) {
    return comparer.alternatives(plan.brief(), moment, k);
  }
}
