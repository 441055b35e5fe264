package fingering.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fingering.demand.Demand;
import fingering.demand.Skill;
import fingering.plan.Plan;
import java.util.BitSet;

/** The demands on a plan, as JSON. */
public final class DemandsJson {
  private DemandsJson() {}

  /** Adds the array {@code demands} to a plan; nothing if there are no demands. */
  static void fill(ObjectNode node, Plan plan) {
    if (plan.brief().demands().isEmpty()) {
      return;
    }
    ArrayNode all = node.putArray("demands");
    for (Demand demand : plan.brief().demands()) {
      ObjectNode entry = all.addObject().put("demand", demand.text());
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
