package fingering.cli.text;

import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.Multimaps;
import fingering.cli.student.Student;
import fingering.cli.student.Students;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.music.Moment;
import fingering.plan.Plan;
import fingering.plan.PlanSkillGap;
import fingering.plan.PlannedNote;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Notes on plans for the students who play them: new skills, and playing together. */
public final class StudentsText {
  /** From this length, in microseconds, an open string stands out among stopped notes. */
  private static final long NOTICEABLE = 500_000;

  private static final String TOGETHER = "Playing together";

  private StudentsText() {}

  /** The notes by heading; empty if no students are named. */
  static ImmutableListMultimap<String, String> notes(List<Plan> plans, Students students) {
    ImmutableListMultimap.Builder<String, String> notes = ImmutableListMultimap.builder();
    String heading = students.several() ? "New to these players" : "New to this player";
    for (Plan plan : plans) {
      for (Student student : students.known()) {
        String who = students.several() ? ", " + student.file() : "";
        notes.put(heading, plan.name() + who + ": " + unlearned(plan, student));
      }
    }
    if (students.several()) {
      notes.put(
          TOGETHER,
          "One plan, one sound: everyone plays each note on the same string with the same finger,"
              + " and shifts to the same note.");
      plans.forEach(plan -> openStrings(plan).ifPresent(text -> notes.put(TOGETHER, text)));
    }
    return notes.build();
  }

  /** The notes as text, each heading with its paragraphs and an empty line. */
  static String of(List<Plan> plans, Students students, int columns, TextStyle style) {
    StringBuilder text = new StringBuilder();
    Multimaps.asMap(notes(plans, students))
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
    String skills = newSkills(plan, student);
    return (skills.isEmpty() ? "nothing" : skills) + ".";
  }

  /** The skills that are new to a student, with their measures; empty if there are none. */
  public static String newSkills(Plan plan, Student student) {
    return PlanSkillGap.of(plan, student.player()).stream()
        .map(gap -> gap.skill() + " in m. " + Whereabouts.list(gap.measures()))
        .collect(Collectors.joining("; "));
  }

  /** A sentence on open strings that stand out; empty if there are none. */
  private static Optional<String> openStrings(Plan plan) {
    TreeMap<Integer, String> measures = new TreeMap<>();
    for (PlannedNote note : plan.notes()) {
      if (standsOut(plan, note)) {
        measures.put(note.note().place().measureIndex(), note.note().place().measure());
      }
    }
    if (measures.isEmpty()) {
      return Optional.empty();
    }
    List<String> ranges = MeasureRanges.of(measures);
    return Optional.of(
        "%s: open strings of half a second or more ring without vibrato, in m. %s; either everyone plays them open or no one does (--avoid open-strings@%s)."
            .formatted(plan.name(), Whereabouts.list(ranges), ranges.get(0).replace('–', '-')));
  }

  /** Whether a note is an open string that stands out and could be stopped instead. */
  private static boolean standsOut(Plan plan, PlannedNote note) {
    Moment moment = plan.passage().moments().get(note.moment());
    return note.open()
        && !moment.pizzicato()
        && moment.soundMicros() >= NOTICEABLE
        && note.note().midi() > plan.passage().instrument().lowest().midi();
  }
}
