package fingering.cli.text;

import com.google.common.collect.ImmutableList;
import fingering.cli.lesson.LessonPassages.StudentPlan;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.music.Measure;
import fingering.music.Passage;
import fingering.plan.Plan;
import fingering.plan.PlannedNote;
import fingering.tables.RomanNumeral;
import fingering.tempo.ComfortableTempo;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The plans of several students for the same music, side by side: the measures in which they
 * differ, and a line for each student.
 */
public final class LessonsText {
  private static final int MEASURE = 8;
  private static final int GAP = 2;
  private static final int NUMBER = 8;
  private static final int CROSSINGS = 11;
  private static final int FOURTH = 5;

  /** Width of the numbers and the tempo. */
  private static final int FIGURES = NUMBER + CROSSINGS + FOURTH + 26;

  private static final int NARROWEST = 10;

  private LessonsText() {}

  /** The text. */
  public static String of(ImmutableList<StudentPlan> students, int columns, TextStyle style) {
    Passage passage = students.get(0).plan().passage();
    List<Measure> measures = passage.measures();
    List<String> lines = new ArrayList<>();
    lines.add(style.bold(HeadingText.title(passage)));
    lines.add(
        passage.partName()
            + ", measures "
            + measures.get(0).number()
            + "–"
            + measures.get(measures.size() - 1).number()
            + ", for "
            + students.size()
            + " students");
    lines.add("");
    differences(students, columns, style, lines);
    summary(students, columns, style, lines);
    return String.join("\n", lines) + "\n";
  }

  private static void differences(
      List<StudentPlan> students, int columns, TextStyle style, List<String> lines) {
    Map<Integer, List<Integer>> notes = differing(students);
    if (notes.isEmpty()) {
      lines.add("They play every note in the same way.");
      lines.add("");
      return;
    }
    int width = Math.max(12, (columns - MEASURE) / students.size() - GAP);
    StringBuilder head = new StringBuilder(TextLayout.pad("Measure", MEASURE));
    students.forEach(one -> head.append(TextLayout.pad(cut(one.student(), width), width + GAP)));
    lines.add(style.bold(head.toString().stripTrailing()));
    for (List<Integer> inMeasure : notes.values()) {
      List<List<String>> cells =
          students.stream()
              .map(one -> TextLayout.wrap(fingers(one.plan(), inMeasure), width, 0))
              .toList();
      String measure =
          students.get(0).plan().notes().get(inMeasure.get(0)).note().place().measure();
      int height = cells.stream().mapToInt(List::size).max().orElse(1);
      for (int line = 0; line < height; line++) {
        StringBuilder row = new StringBuilder(TextLayout.pad(line == 0 ? measure : "", MEASURE));
        for (List<String> cell : cells) {
          row.append(TextLayout.pad(line < cell.size() ? cell.get(line) : "", width + GAP));
        }
        lines.add(row.toString().stripTrailing());
      }
    }
    lines.add("");
  }

  /** All notes of the measures in which the students do not play each note in the same way. */
  private static Map<Integer, List<Integer>> differing(List<StudentPlan> students) {
    Map<Integer, List<Integer>> notes = new TreeMap<>();
    Map<Integer, Boolean> differ = new LinkedHashMap<>();
    List<PlannedNote> first = students.get(0).plan().notes();
    for (int i = 0; i < first.size(); i++) {
      int note = i;
      int measure = first.get(i).note().place().measureIndex();
      notes.computeIfAbsent(measure, index -> new ArrayList<>()).add(note);
      differ.merge(
          measure,
          students.stream()
              .anyMatch(one -> !one.plan().notes().get(note).sameFingering(first.get(note))),
          Boolean::logicalOr);
    }
    differ.forEach(
        (measure, differs) -> {
          if (!differs) {
            notes.remove(measure);
          }
        });
    return Collections.unmodifiableMap(notes);
  }

  /** The fingers with the string, where it changes: {@code III 1 3 II 0 2}. */
  private static String fingers(Plan plan, List<Integer> notes) {
    List<String> words = new ArrayList<>();
    int string = 0;
    for (int index : notes) {
      PlannedNote note = plan.notes().get(index);
      if (note.placement().string() != string) {
        string = note.placement().string();
        words.add(RomanNumeral.of(string));
      }
      words.add(note.finger());
    }
    return String.join(" ", words);
  }

  private static void summary(
      List<StudentPlan> students, int columns, TextStyle style, List<String> lines) {
    int room = Math.max(NARROWEST, (columns - FIGURES) / 2);
    lines.add(
        style.bold(
            TextLayout.pad("Student", room)
                + TextLayout.pad("Plan", room)
                + TextLayout.padLeft("Shifts", NUMBER)
                + TextLayout.padLeft("Crossings", CROSSINGS)
                + TextLayout.padLeft("4th", FOURTH)
                + "  Comfortable to"));
    for (StudentPlan one : students) {
      lines.add(
          TextLayout.pad(cut(one.student(), room - 1), room)
              + TextLayout.pad(cut(one.plan().name(), room - 1), room)
              + TextLayout.padLeft(Integer.toString(one.plan().shifts()), NUMBER)
              + TextLayout.padLeft(Integer.toString(one.plan().crossings()), CROSSINGS)
              + TextLayout.padLeft(Integer.toString(one.plan().fourthFingers()), FOURTH)
              + "  "
              + tempo(ComfortableTempo.of(one.plan(), one.level())));
    }
  }

  private static String tempo(ComfortableTempo tempo) {
    return tempo.wellAbove()
        ? TempoText.wellAbove(tempo.marked())
        : tempo.tempo().map(TempoText::mark).orElse("any tempo");
  }

  private static String cut(String text, int width) {
    return text.length() <= width ? text : text.substring(0, width - 1) + "…";
  }
}
