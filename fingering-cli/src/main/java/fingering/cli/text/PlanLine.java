package fingering.cli.text;

import com.google.common.collect.ImmutableList;
import fingering.cli.student.Students;
import fingering.plan.Plan;
import fingering.plan.PlanRemarks;
import fingering.tempo.ComfortableTempo;
import fingering.tempo.PlayerSpeed;
import fingering.verdict.PlanFigures;

/** A plan in one line, and what to know about it. */
public final class PlanLine {
  private PlanLine() {}

  /** Where the hand is, the figures of the plan, and its comfortable tempo. */
  public static String of(Plan plan, PlayerSpeed level) {
    ComfortableTempo tempo = ComfortableTempo.of(plan, level);
    String comfortable =
        tempo.tempo().isEmpty()
            ? "at any tempo"
            : tempo.wellAbove()
                ? TempoText.wellAbove(tempo.marked())
                : "up to " + TempoText.mark(tempo.tempo().get());
    return "%s; %s; comfortable %s."
        .formatted(Whereabouts.of(plan), VerdictText.figures(PlanFigures.of(plan)), comfortable);
  }

  /** What is new to a student, and remarks on the plan; a sentence each. */
  public static ImmutableList<String> remarks(Plan plan, Students students) {
    ImmutableList.Builder<String> remarks = ImmutableList.builder();
    students.known().stream()
        .map(student -> StudentsText.newSkills(plan, student))
        .filter(skills -> !skills.isEmpty())
        .forEach(skills -> remarks.add("New to this player: " + skills + "."));
    return remarks.addAll(PlanRemarks.of(plan)).build();
  }
}
