package fingering.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.google.common.collect.ImmutableList;
import fingering.plan.Choice;
import fingering.plan.MomentExplanation;
import fingering.plan.Plan;

/** The ways to take some measures, as JSON. */
final class ChoicesJson {
  private ChoicesJson() {}

  /** Adds the {@code choices} object to that of a plan. */
  static void fill(ObjectNode plan, ImmutableList<Choice> ways) {
    ObjectNode choices = plan.putObject("choices");
    Choice best = ways.get(0);
    choices.put("from", best.notes().get(0).note().place().measure());
    choices.put("to", best.notes().get(best.notes().size() - 1).note().place().measure());
    WhyJson.indices(choices.putArray("notes"), best.plan(), best.notes());
    ArrayNode all = choices.putArray("ways");
    ways.forEach(way -> fill(all.addObject(), best, way));
  }

  private static void fill(ObjectNode node, Choice best, Choice way) {
    Plan plan = way.plan();
    MomentExplanation why = way.comparedWith(best);
    WhyJson.price(node, why);
    way.positionBefore().ifPresent(position -> node.put("comesFrom", position.toString()));
    way.positionAfter().ifPresent(position -> node.put("goesOnIn", position.toString()));
    WhyJson.taken(node.putArray("taken"), plan, way.notes());
    WhyJson.taken(
        node.putArray("changesBefore"),
        plan,
        way.changesBefore(best).stream().map(MomentExplanation.Change::other).toList());
    WhyJson.taken(
        node.putArray("changesAfter"),
        plan,
        way.changesAfter(best).stream().map(MomentExplanation.Change::other).toList());
    WhyJson.indices(node.putArray("shiftsAdded"), plan, why.shiftsAdded());
    WhyJson.indices(node.putArray("shiftsSpared"), best.plan(), why.shiftsSaved());
  }
}
