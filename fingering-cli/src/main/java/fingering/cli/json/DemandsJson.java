package fingering.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fingering.demand.Demand;
import fingering.demand.Skill;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.verdict.DemandPrice;
import java.util.BitSet;
import java.util.function.Function;

/** The demands on a plan, as JSON. */
public final class DemandsJson {
  private DemandsJson() {}

  /**
   * Adds the array {@code demands} to a plan; nothing if there are no demands.
   *
   * @param search the best plan of a brief without further demands
   */
  static void fill(ObjectNode node, Plan plan, Function<Brief, Plan> search) {
    if (plan.brief().demands().isEmpty()) {
      return;
    }
    ArrayNode all = node.putArray("demands");
    for (DemandPrice price : DemandPrice.of(plan, search)) {
      Demand demand = price.demand();
      ObjectNode entry =
          all.addObject()
              .put("demand", demand.text())
              .put("alone", price.alone())
              .put("dropping", price.dropping());
      if (demand instanceof Skill skill) {
        notes(entry.putArray("notes"), plan, skill);
      }
    }
  }

  /** Adds the indices of the notes in which a plan shows a skill. */
  public static void notes(ArrayNode notes, Plan plan, Skill skill) {
    BitSet moments = skill.shownIn(plan.passage(), plan.grips());
    for (int i = 0; i < plan.notes().size(); i++) {
      if (moments.get(plan.notes().get(i).moment())) {
        notes.add(i);
      }
    }
  }
}
