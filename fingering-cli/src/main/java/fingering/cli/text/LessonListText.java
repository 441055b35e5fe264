package fingering.cli.text;

import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.demand.MeasureSpan;
import fingering.lesson.Hearing;
import fingering.lesson.Lesson;
import fingering.lesson.LessonPlan;
import fingering.lesson.StoredLesson;
import fingering.practice.JournalFile;
import fingering.tables.FingeringException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lessons as lines of a table. */
public final class LessonListText {
  private static final String NONE = "–";
  private static final int GAP = 2;

  /** The narrowest that a column becomes. */
  private static final int NARROWEST = 8;

  private static final List<String> HEAD =
      List.of("Lesson", "Student", "Score", "Part", "Measures", "Plan", "Hearing", "Last clean");

  private LessonListText() {}

  /** The table, a line for each lesson. */
  public static String of(List<StoredLesson> lessons, int columns, TextStyle style) {
    if (lessons.isEmpty()) {
      return "There are no lessons in this folder; save one with --save-lesson.\n";
    }
    List<List<String>> rows = new ArrayList<>();
    rows.add(HEAD);
    lessons.forEach(lesson -> rows.add(row(lesson)));
    int[] widths = widths(rows, columns);
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < rows.size(); i++) {
      StringBuilder line = new StringBuilder();
      for (int column = 0; column < HEAD.size(); column++) {
        line.append(
            TextLayout.pad(cut(rows.get(i).get(column), widths[column]), widths[column] + GAP));
      }
      String row = line.toString().stripTrailing();
      text.append(i == 0 ? style.bold(row) : row).append('\n');
    }
    return text.toString();
  }

  /** The width of each column; while the table is too wide, the widest column is narrowed. */
  private static int[] widths(List<List<String>> rows, int columns) {
    int[] widths = new int[HEAD.size()];
    for (List<String> row : rows) {
      for (int column = 0; column < widths.length; column++) {
        widths[column] = Math.max(widths[column], row.get(column).length());
      }
    }
    int total = GAP * (widths.length - 1);
    for (int width : widths) {
      total += width;
    }
    for (; total > columns; total--) {
      int widest = 0;
      // Dates and tempi, in the last two columns, stay whole.
      for (int column = 1; column < widths.length - 2; column++) {
        widest = widths[column] > widths[widest] ? column : widest;
      }
      if (widths[widest] <= NARROWEST) {
        break;
      }
      widths[widest]--;
    }
    return widths;
  }

  private static String cut(String text, int width) {
    return text.length() <= width ? text : text.substring(0, width - 1) + "…";
  }

  private static List<String> row(StoredLesson stored) {
    Lesson lesson = stored.lesson();
    return List.of(
        stored.name(),
        lesson.student().orElse(NONE),
        // Without its ending, there is room for the part.
        lesson.score().replaceFirst("\\.[A-Za-z]+$", ""),
        lesson.part().orElse(NONE),
        lesson.measures().orElse("all"),
        lesson.chosen().map(LessonPlan::name).orElse(NONE),
        lesson.hearing().flatMap(Hearing::date).map(Object::toString).orElse(NONE),
        lastClean(stored));
  }

  private static String lastClean(StoredLesson lesson) {
    try {
      return lesson
          .journalFile()
          .flatMap(file -> new JournalFile(file).read().lastClean(MeasureSpan.WHOLE))
          .map(TempoText::mark)
          .orElse(NONE);
    } catch (FingeringException e) {
      return "unreadable";
    }
  }

  /** The files that a lesson names, and whether they are there. */
  public static String files(StoredLesson lesson, Optional<Path> student, int columns) {
    List<String> lines = new ArrayList<>();
    lines.add("");
    lines.add(
        "Score: "
            + lesson.scoreFile()
            + (Files.exists(lesson.scoreFile()) ? "" : ", which is not there"));
    student.ifPresent(file -> lines.add("Student: " + file));
    lesson
        .journalFile()
        .ifPresent(
            file ->
                lines.add(
                    "Journal: "
                        + file
                        + (Files.exists(file) ? "" : ", which begins with 'journal add'")));
    StringBuilder text = new StringBuilder();
    for (String line : lines) {
      TextLayout.wrap(line, columns, 2).forEach(row -> text.append(row).append('\n'));
    }
    return text.toString();
  }
}
