package fingering.verdict;

import com.google.common.collect.ImmutableList;
import fingering.demand.Demand;
import fingering.plan.Brief;
import fingering.plan.Plan;
import java.util.function.Function;

/**
 * What one of several demands costs. Both prices are exact: each compares two best plans.
 *
 * @param demand the demand
 * @param alone the points of the best plan with only this demand, above the best plan with none
 * @param dropping the points that the best plan without this demand saves
 * @param saved how much easier the best plan without this demand is
 */
public record DemandPrice(Demand demand, long alone, long dropping, PlanFigures saved) {

  /**
   * The price of each demand of a plan, in the order of its brief. The other parts of the brief
   * stay as they are.
   *
   * @param search returns the best plan of a brief without adding demands
   */
  public static ImmutableList<DemandPrice> of(Plan plan, Function<Brief, Plan> search) {
    Brief brief = plan.brief();
    long free = search.apply(brief.withDemands(ImmutableList.of())).total();
    ImmutableList.Builder<DemandPrice> prices = ImmutableList.builder();
    for (Demand demand : brief.demands()) {
      Plan only =
          brief.demands().size() == 1
              ? plan
              : search.apply(brief.withDemands(ImmutableList.of(demand)));
      Plan without =
          search.apply(
              brief.withDemands(
                  brief.demands().stream()
                      .filter(other -> other != demand)
                      .collect(ImmutableList.toImmutableList())));
      prices.add(
          new DemandPrice(
              demand,
              only.total() - free,
              plan.total() - without.total(),
              PlanFigures.of(plan).minus(PlanFigures.of(without))));
    }
    return prices.build();
  }
}
