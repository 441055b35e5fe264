package fingering.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fingering.plan.NewToPlayer;
import fingering.plan.Plan;
import fingering.scoring.Scoring;
import fingering.tempo.Level;

/**
 * What plans are charged by and for whom; it is named wherever they are shown.
 *
 * @param scoring the rules with their weights
 * @param preset whether the weights are a preset
 * @param weights name of the preset, or of the file of weights
 * @param student whom the plans are for
 * @param level how quick the player is
 */
record Charging(Scoring scoring, boolean preset, String weights, Student student, Level level) {

  /** As a line of text. */
  String line() {
    return (preset ? "Preset: " : "Weights: ")
        + weights
        + student.file().map(file -> "; player: " + file).orElse("");
  }

  /** As the object {@code scoring} of that node. */
  void fill(ObjectNode root) {
    ObjectNode node = root.putObject("scoring").put(preset ? "preset" : "weights", weights);
    student.file().ifPresent(file -> node.put("player", file));
  }

  /** What is new to the student in a plan, as its array {@code new}; nothing without a student. */
  void fill(ObjectNode node, Plan plan) {
    if (student.file().isEmpty()) {
      return;
    }
    ArrayNode all = node.putArray("new");
    for (NewToPlayer one : NewToPlayer.of(plan, student.player())) {
      ObjectNode entry = all.addObject().put("rule", one.rule()).put("what", one.what());
      one.measures().forEach(entry.putArray("measures")::add);
      one.notes().forEach(entry.putArray("notes")::add);
    }
  }
}
