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
 * @param students whom the plans are for
 * @param level how quick the player is
 */
record Charging(Scoring scoring, boolean preset, String weights, Students students, Level level) {

  /** As a line of text. */
  String line() {
    return (preset ? "Preset: " : "Weights: ")
        + weights
        + (students.known().isEmpty()
            ? ""
            : (students.several() ? "; players: " : "; player: ") + students.files());
  }

  /** As the object {@code scoring} of that node. */
  void fill(ObjectNode root) {
    ObjectNode node = root.putObject("scoring").put(preset ? "preset" : "weights", weights);
    if (students.several()) {
      ArrayNode files = node.putArray("players");
      students.known().forEach(student -> files.add(student.file()));
    } else if (!students.known().isEmpty()) {
      node.put("player", students.files());
    }
  }

  /** What is new to the students in a plan, as its array {@code new}; nothing without students. */
  void fill(ObjectNode node, Plan plan) {
    if (students.known().isEmpty()) {
      return;
    }
    ArrayNode all = node.putArray("new");
    for (Student student : students.known()) {
      for (NewToPlayer one : NewToPlayer.of(plan, student.player())) {
        ObjectNode entry = all.addObject();
        if (students.several()) {
          entry.put("player", student.file());
        }
        entry.put("rule", one.rule()).put("what", one.what());
        one.measures().forEach(entry.putArray("measures")::add);
        one.notes().forEach(entry.putArray("notes")::add);
      }
    }
  }
}
