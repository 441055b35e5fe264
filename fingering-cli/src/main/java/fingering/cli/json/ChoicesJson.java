package fingering.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.google.common.collect.ImmutableList;
import fingering.plan.Choice;
import fingering.plan.MomentExplanation;
import fingering.plan.Plan;

/** The fingerings of some measures, as JSON. */
final class ChoicesJson {
  private ChoicesJson() {}

  /** Adds the object {@code choices} to a plan. */
  static void fill(ObjectNode plan, ImmutableList<Choice> fingerings) {
    ObjectNode choices = plan.putObject("choices");
    Choice best = fingerings.get(0);
    choices.put("from", best.notes().get(0).note().place().measure());
    choices.put("to", best.notes().get(best.notes().size() - 1).note().place().measure());
    WhyJson.indices(choices.putArray("notes"), best.plan(), best.notes());
    ArrayNode all = choices.putArray("ways");
    fingerings.forEach(each -> fill(all.addObject(), best, each));
  }

  private static void fill(ObjectNode node, Choice best, Choice choice) {
    Plan plan = choice.plan();
    MomentExplanation difference = choice.comparedWith(best);
    WhyJson.cost(node, difference);
    choice.positionBefore().ifPresent(position -> node.put("comesFrom", position.toString()));
    choice.positionAfter().ifPresent(position -> node.put("goesOnIn", position.toString()));
    WhyJson.fingerings(node.putArray("taken"), plan, choice.notes());
    WhyJson.fingerings(
        node.putArray("changesBefore"),
        plan,
        choice.changesBefore(best).stream().map(MomentExplanation.Change::other).toList());
    WhyJson.fingerings(
        node.putArray("changesAfter"),
        plan,
        choice.changesAfter(best).stream().map(MomentExplanation.Change::other).toList());
    WhyJson.indices(node.putArray("shiftsAdded"), plan, difference.shiftsAdded());
    WhyJson.indices(node.putArray("shiftsSpared"), best.plan(), difference.shiftsSaved());
  }
}
