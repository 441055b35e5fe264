package fingering.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.google.common.collect.ImmutableList;
import fingering.plan.Alternative;
import fingering.plan.MomentExplanation;
import fingering.plan.Plan;
import fingering.plan.PlannedNote;
import java.util.List;

/** The ways to take the notes of a moment, as JSON. */
final class WhyJson {
  private WhyJson() {}

  /** Adds the {@code why} object to that of a plan. */
  static void fill(ObjectNode plan, ImmutableList<Alternative> ways) {
    ObjectNode why = plan.putObject("why");
    Alternative chosen = ways.get(0);
    why.put("measure", chosen.notes().get(0).note().place().measure());
    why.put("beat", chosen.notes().get(0).note().place().beatText());
    ArrayNode notes = why.putArray("notes");
    chosen.notes().forEach(note -> notes.add(chosen.plan().notes().indexOf(note)));
    ArrayNode all = why.putArray("alternatives");
    ways.stream().skip(1).forEach(way -> fill(all.addObject(), new MomentExplanation(chosen, way)));
  }

  private static void fill(ObjectNode node, MomentExplanation why) {
    Plan other = why.other().plan();
    price(node, why);
    taken(node.putArray("taken"), other, why.other().notes());
    taken(
        node.putArray("changes"),
        other,
        why.changesElsewhere().stream().map(MomentExplanation.Change::other).toList());
    indices(node.putArray("shiftsAdded"), other, why.shiftsAdded());
    indices(node.putArray("shiftsSpared"), why.chosen().plan(), why.shiftsSaved());
  }

  /** What another way costs, and what each rule charges more. */
  static void price(ObjectNode node, MomentExplanation why) {
    node.put("total", why.other().plan().total()).put("more", why.extraCost());
    ArrayNode rules = node.putArray("rules");
    why.byRule()
        .forEach(
            rule ->
                rules
                    .addObject()
                    .put("rule", rule.rule())
                    .put("name", rule.name())
                    .put("more", rule.points()));
  }

  /** How some notes of a plan are taken. */
  static void taken(ArrayNode array, Plan plan, List<PlannedNote> notes) {
    notes.forEach(
        note ->
            array
                .addObject()
                .put("note", plan.notes().indexOf(note))
                .put("string", note.placement().string())
                .put("finger", note.finger())
                .put("position", note.position()));
  }

  /** Notes of a plan by their index. */
  static void indices(ArrayNode array, Plan plan, List<PlannedNote> notes) {
    notes.forEach(note -> array.add(plan.notes().indexOf(note)));
  }
}
