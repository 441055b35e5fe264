package fingering.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.google.common.collect.ImmutableList;
import fingering.plan.Alternative;
import fingering.plan.MomentExplanation;
import fingering.plan.Plan;
import fingering.plan.PlannedNote;
import java.util.List;

/** The fingerings of the notes of one moment, as JSON. */
final class WhyJson {
  private WhyJson() {}

  /** Adds the object {@code why} to a plan; the first alternative is the chosen one. */
  static void fill(ObjectNode plan, ImmutableList<Alternative> alternatives) {
    ObjectNode why = plan.putObject("why");
    Alternative chosen = alternatives.get(0);
    why.put("measure", chosen.notes().get(0).note().place().measure());
    why.put("beat", chosen.notes().get(0).note().place().beatText());
    ArrayNode notes = why.putArray("notes");
    chosen.notes().forEach(note -> notes.add(chosen.plan().notes().indexOf(note)));
    ArrayNode all = why.putArray("alternatives");
    alternatives.stream()
        .skip(1)
        .forEach(other -> fill(all.addObject(), new MomentExplanation(chosen, other)));
  }

  private static void fill(ObjectNode node, MomentExplanation difference) {
    Plan other = difference.other().plan();
    cost(node, difference);
    fingerings(node.putArray("taken"), other, difference.other().notes());
    fingerings(
        node.putArray("changes"),
        other,
        difference.changesElsewhere().stream().map(MomentExplanation.Change::other).toList());
    indices(node.putArray("shiftsAdded"), other, difference.shiftsAdded());
    indices(node.putArray("shiftsSpared"), difference.chosen().plan(), difference.shiftsSaved());
  }

  /** What another fingering costs, and how much more by each rule. */
  static void cost(ObjectNode node, MomentExplanation difference) {
    node.put("total", difference.other().plan().total()).put("more", difference.extraCost());
    ArrayNode rules = node.putArray("rules");
    difference
        .byRule()
        .forEach(
            rule ->
                rules
                    .addObject()
                    .put("rule", rule.rule())
                    .put("name", rule.name())
                    .put("more", rule.points()));
  }

  /** The fingerings of some notes of a plan. */
  static void fingerings(ArrayNode array, Plan plan, List<PlannedNote> notes) {
    notes.forEach(
        note ->
            array
                .addObject()
                .put("note", plan.notes().indexOf(note))
                .put("string", note.placement().string())
                .put("finger", note.finger())
                .put("position", note.position().toString()));
  }

  /** The indices of some notes of a plan. */
  static void indices(ArrayNode array, Plan plan, List<PlannedNote> notes) {
    notes.forEach(note -> array.add(plan.notes().indexOf(note)));
  }
}
