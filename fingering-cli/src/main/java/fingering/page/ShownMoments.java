package fingering.page;

import fingering.demand.Demand;
import fingering.demand.Skill;
import fingering.fingerboard.Placement;
import fingering.plan.Plan;
import fingering.search.RequiredStays;
import fingering.search.Requirement;
import fingering.tables.Position;
import java.util.BitSet;

/** The moments at which a plan shows a required skill. */
final class ShownMoments {
  private ShownMoments() {}

  static BitSet of(Plan plan) {
    BitSet moments = new BitSet();
    for (Demand demand : plan.brief().demands()) {
      if (demand instanceof Skill skill) {
        moments.or(skill.shownIn(plan.passage(), plan.grips()));
      }
    }
    for (Requirement required : plan.brief().requirement().parts()) {
      if (required instanceof RequiredStays stays) {
        stays.positions().forEach(position -> addStays(plan, position, stays.notes(), moments));
      }
    }
    return moments;
  }

  /** Adds the runs of moments in a position that have at least that many stopped notes. */
  private static void addStays(Plan plan, Position position, int notes, BitSet moments) {
    int from = 0;
    int stopped = 0;
    for (int m = 0; m <= plan.grips().size(); m++) {
      boolean inPosition =
          m < plan.grips().size() && plan.grips().get(m).frame().position().equals(position);
      if (inPosition) {
        stopped +=
            (int) plan.grips().get(m).placements().stream().filter(Placement::stopped).count();
        continue;
      }
      if (stopped >= notes) {
        moments.set(from, m);
      }
      from = m + 1;
      stopped = 0;
    }
  }
}
