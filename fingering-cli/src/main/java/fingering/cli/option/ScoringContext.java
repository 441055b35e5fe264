package fingering.cli.option;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fingering.plan.Plan;
import fingering.plan.PlanSkillGap;
import fingering.scoring.Scoring;
import fingering.tempo.PlayerSpeed;
import java.util.Optional;

/**
 * What plans are charged by and for whom; it is named wherever they are shown.
 *
 * @param scoring the rules with their weights
 * @param weights name of the file of weights, where there is one
 * @param preset name of the preset, where there is none or the file leaves rules to it
 * @param students whom the plans are for
 * @param level how quick the player is
 */
public record ScoringContext(
    Scoring scoring,
    Optional<String> weights,
    Optional<String> preset,
    Students students,
    PlayerSpeed level) {

  /** As a line of text. */
  public String line() {
    return points()
        + (students.known().isEmpty()
            ? ""
            : (students.several() ? "; players: " : "; player: ") + students.files());
  }

  private String points() {
    return weights
        .map(
            file ->
                "Weights: "
                    + file
                    + preset.map(name -> ", and " + name + " for the rest").orElse(""))
        .orElseGet(() -> "Preset: " + preset.orElseThrow());
  }

  /** As the object {@code scoring} of that node. */
  public void fill(ObjectNode root) {
    ObjectNode node = root.putObject("scoring");
    weights.ifPresent(file -> node.put("weights", file));
    preset.ifPresent(name -> node.put("preset", name));
    if (students.several()) {
      ArrayNode files = node.putArray("players");
      students.known().forEach(student -> files.add(student.file()));
    } else if (!students.known().isEmpty()) {
      node.put("player", students.files());
    }
  }

  /** What is new to the students in a plan, as its array {@code new}; nothing without students. */
  public void fill(ObjectNode node, Plan plan) {
    if (students.known().isEmpty()) {
      return;
    }
    ArrayNode all = node.putArray("new");
    for (Student student : students.known()) {
      for (PlanSkillGap one : PlanSkillGap.of(plan, student.player())) {
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
