package fingering.cli.text;

import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.Multimaps;
import fingering.cli.student.Student;
import fingering.cli.student.Students;
import fingering.cli.terminal.NumberRanges;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.music.Moment;
import fingering.plan.Plan;
import fingering.plan.PlanSkillGap;
import fingering.plan.PlannedNote;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What plans ask of the students whom they are for. */
final class StudentsText {
  /** An open string that sounds so long is heard among stopped ones, in microseconds. */
  private static final long HEARD = 500_000;

  private static final String TOGETHER = "Together";

  private StudentsText() {}

  /** What is told, by heading; nothing where nothing is said of students. */
  static ImmutableListMultimap<String, String> told(List<Plan> plans, Students students) {
    ImmutableListMultimap.Builder<String, String> told = ImmutableListMultimap.builder();
    String heading = students.several() ? "New to these players" : "New to this player";
    for (Plan plan : plans) {
      for (Student student : students.known()) {
        String whose = students.several() ? ", " + student.file() : "";
        told.put(heading, plan.name() + whose + ": " + unlearned(plan, student));
      }
    }
    if (students.several()) {
      told.put(
          TOGETHER,
          "One plan, one sound: all take each note on the same string, by the same finger, and"
              + " shift to the same note.");
      plans.forEach(plan -> open(plan).ifPresent(said -> told.put(TOGETHER, said)));
    }
    return told.build();
  }

  /** The same as text, each heading with its paragraphs and an empty line. */
  static String of(List<Plan> plans, Students students, int columns, TextStyle style) {
    StringBuilder text = new StringBuilder();
    Multimaps.asMap(told(plans, students))
        .forEach(
            (heading, paragraphs) -> {
              text.append(style.bold(heading)).append('\n');
              for (String paragraph : paragraphs) {
                TextLayout.wrap("  " + paragraph, columns, 2)
                    .forEach(line -> text.append(line).append('\n'));
              }
              text.append('\n');
            });
    return text.toString();
  }

  private static String unlearned(Plan plan, Student student) {
    String told =
        PlanSkillGap.of(plan, student.player()).stream()
            .map(one -> one.what() + " in m. " + SummaryText.list(one.measures()))
            .collect(Collectors.joining("; "));
    return (told.isEmpty() ? "nothing" : told) + ".";
  }

  /** The open strings that are heard, in one sentence; empty where there are none. */
  private static Optional<String> open(Plan plan) {
    Map<Integer, String> measures = new TreeMap<>();
    for (PlannedNote note : plan.notes()) {
      if (heard(plan, note)) {
        measures.put(note.note().place().measureIndex(), note.note().place().measure());
      }
    }
    if (measures.isEmpty()) {
      return Optional.empty();
    }
    List<String> runs =
        NumberRanges.of(measures.keySet()).stream()
            .map(
                run ->
                    measures.get(run.from())
                        + (run.from() == run.to() ? "" : "–" + measures.get(run.to())))
            .toList();
    return Optional.of(
        "%s: open strings of half a second or more ring without vibrato, in m. %s; all play them open, or none does (--avoid open-strings@%s)."
            .formatted(plan.name(), SummaryText.list(runs), runs.get(0).replace('–', '-')));
  }

  /** Whether a note is an open string that is heard, and could be stopped instead. */
  private static boolean heard(Plan plan, PlannedNote note) {
    Moment moment = plan.passage().moments().get(note.moment());
    return note.open()
        && !moment.pizzicato()
        && moment.soundMicros() >= HEARD
        && note.note().midi() > plan.passage().instrument().lowest().midi();
  }
}
