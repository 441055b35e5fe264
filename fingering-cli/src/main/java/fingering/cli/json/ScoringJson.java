package fingering.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fingering.cli.student.ScoringContext;
import fingering.cli.student.Student;
import fingering.cli.student.Students;
import fingering.plan.Plan;
import fingering.plan.PlanSkillGap;

/** The scoring of plans, and what is new to the students, as JSON. */
public final class ScoringJson {
  private ScoringJson() {}

  /** Adds the object {@code scoring}. */
  public static void fill(ObjectNode root, ScoringContext context) {
    ObjectNode node = root.putObject("scoring");
    context.weights().ifPresent(file -> node.put("weights", file));
    context.preset().ifPresent(name -> node.put("preset", name));
    Students students = context.students();
    if (students.several()) {
      ArrayNode files = node.putArray("players");
      students.known().forEach(student -> files.add(student.file()));
    } else if (!students.known().isEmpty()) {
      node.put("player", students.files());
    }
  }

  /** Adds the array {@code new}, skills of a plan that students lack; nothing without students. */
  static void newSkills(ObjectNode node, Plan plan, Students students) {
    if (students.known().isEmpty()) {
      return;
    }
    ArrayNode all = node.putArray("new");
    for (Student student : students.known()) {
      for (PlanSkillGap gap : PlanSkillGap.of(plan, student.player())) {
        ObjectNode entry = all.addObject();
        if (students.several()) {
          entry.put("player", student.file());
        }
        entry.put("rule", gap.rule()).put("what", gap.skill());
        gap.measures().forEach(entry.putArray("measures")::add);
        gap.notes().forEach(entry.putArray("notes")::add);
      }
    }
  }
}
