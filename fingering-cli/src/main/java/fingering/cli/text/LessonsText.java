package fingering.cli.text;

import com.google.common.collect.ImmutableList;
import fingering.cli.lesson.LessonPassages.StudentPlan;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.music.Measure;
import fingering.music.Passage;
import fingering.plan.Comparison;
import java.util.ArrayList;
import java.util.List;

/**
 * The plans of several students for the same music, side by side: the measures in which they
 * differ, and a line for each student.
 */
public final class LessonsText {
  private LessonsText() {}

  /** The text. */
  public static String of(ImmutableList<StudentPlan> students, int columns, TextStyle style) {
    Passage passage = students.get(0).plan().passage();
    List<Measure> differing =
        new Comparison(
                passage,
                students.stream().map(StudentPlan::plan).collect(ImmutableList.toImmutableList()),
                ImmutableList.of())
            .differingMeasures();
    List<String> lines = new ArrayList<>();
    TextLayout.wrap(
            "%s: %s, %d students"
                .formatted(HeadingText.title(passage), HeadingText.music(passage), students.size()),
            columns,
            2)
        .forEach(line -> lines.add(style.bold(line)));
    lines.add(
        differing.isEmpty()
            ? "They play every note the same way."
            : "They play %d of %d measures differently."
                .formatted(differing.size(), passage.measures().size()));
    lines.add("");
    if (!differing.isEmpty()) {
      lines.addAll(
          DifferencesText.of(
              students.stream()
                  .map(one -> new DifferencesText.Column(one.student(), one.plan()))
                  .toList(),
              differing,
              differing.size(),
              columns,
              style));
      lines.add("");
    }
    lines.addAll(
        PlanTable.of(
            "Student",
            students.stream()
                .map(
                    one ->
                        new PlanTable.Row(
                            one.student() + ", " + one.plan().name(), one.plan(), one.level()))
                .toList(),
            style));
    return String.join("\n", lines) + "\n";
  }
}
