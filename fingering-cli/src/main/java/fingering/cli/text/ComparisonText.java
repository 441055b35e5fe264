package fingering.cli.text;

import fingering.cli.student.ScoringContext;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.music.Note;
import fingering.page.PrintedSigns;
import fingering.page.staff.Lane.Direction;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.plan.PlannedNote;
import fingering.tables.RomanNumeral;
import java.util.List;
import java.util.function.Predicate;

/** Plans in columns, as text. */
public final class ComparisonText {
  private static final int NOTE_COLUMNS = 20;
  private static final int NARROWEST = 15;

  private final Comparison comparison;
  private final ScoringContext scoring;
  private final TextStyle style;
  private final int columns;

  /** The plans in blocks that fit side by side. */
  private final List<List<Plan>> plans;

  private final int cell;

  /** Selects the notes to print. */
  private final Predicate<PlannedNote> printed;

  private final StringBuilder text = new StringBuilder();

  private ComparisonText(
      Comparison comparison,
      ScoringContext scoring,
      Predicate<PlannedNote> printed,
      int columns,
      TextStyle style) {
    this.comparison = comparison;
    this.scoring = scoring;
    this.printed = printed;
    this.style = style;
    this.columns = columns;
    plans = TextLayout.blocks(comparison.plans(), (columns - NOTE_COLUMNS) / NARROWEST);
    cell = Math.max(NARROWEST, Math.min(24, (columns - NOTE_COLUMNS) / plans.get(0).size()));
  }

  public static String of(
      Comparison comparison, ScoringContext scoring, int columns, TextStyle style) {
    ComparisonText page = new ComparisonText(comparison, scoring, note -> true, columns, style);
    page.table();
    new SummaryText(comparison, scoring, page.columns, style, page.text).write();
    return page.text.toString();
  }

  /** Only the heading, some of the notes, and the legend. */
  static String some(
      Comparison comparison,
      ScoringContext scoring,
      Predicate<PlannedNote> printed,
      int columns,
      TextStyle style) {
    ComparisonText page = new ComparisonText(comparison, scoring, printed, columns, style);
    page.table();
    return page.text.toString();
  }

  private void table() {
    heading();
    plans.forEach(this::notes);
    legend();
  }

  private void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }

  private void heading() {
    HeadingText.of(comparison.passage(), scoring, columns, style).forEach(this::line);
  }

  private void notes(List<Plan> shown) {
    StringBuilder head = new StringBuilder(TextLayout.pad("  m.  beat  note", NOTE_COLUMNS));
    for (Plan plan : shown) {
      head.append(TextLayout.pad(plan.name(), cell));
    }
    line(style.bold(head.toString()));
    Plan first = comparison.plans().get(0);
    int measure = -1;
    int moment = -1;
    for (int i = 0; i < first.notes().size(); i++) {
      PlannedNote planned = first.notes().get(i);
      if (!printed.test(planned)) {
        continue;
      }
      Note note = planned.note();
      boolean newMeasure = note.place().measureIndex() != measure;
      boolean newMoment = planned.moment() != moment;
      measure = note.place().measureIndex();
      moment = planned.moment();
      boolean differs = comparison.differs(i);
      String number = newMeasure ? note.place().measure() : "";
      String beat = newMoment ? note.place().beatText() : "+";
      StringBuilder row = new StringBuilder();
      row.append(TextLayout.padLeft(number, 4)).append(TextLayout.padLeft(beat, 6)).append("  ");
      row.append(TextLayout.pad(note.written().display(), 5)).append(differs ? "≠  " : "   ");
      for (Plan plan : shown) {
        String content = TextLayout.pad(content(plan, i), cell);
        row.append(differs ? style.marked(content) : content);
      }
      line(row.toString());
    }
    line("");
  }

  private void legend() {
    line("String, finger, position.  ↑ ↓ shift  × crossing  ×× skips a string");
    harmonics(comparison.plans().get(0));
    line(
        "! outside the plan's positions"
            + (comparison.plans().size() > 1 ? "  ≠ the plans differ" : ""));
    line("");
  }

  private void harmonics(Plan plan) {
    if (plan.notes().stream().anyMatch(note -> note.placement().touch().isPresent())) {
      line("° natural harmonic  ◇ artificial harmonic, with the touching finger");
    }
  }

  private static String content(Plan plan, int index) {
    PlannedNote note = plan.notes().get(index);
    StringBuilder content = new StringBuilder();
    content.append(TextLayout.pad(RomanNumeral.of(note.placement().string()), 4));
    content.append(PrintedSigns.finger(note.placement())).append(' ');
    content.append(
        TextLayout.pad(note.open() ? "" : note.placement().frame().position().display(), 5));
    PrintedSigns.shift(plan, note)
        .ifPresent(direction -> content.append(direction == Direction.UP ? '↑' : '↓'));
    content.append("×".repeat(Math.min(2, note.crossing())));
    if (note.outside()) {
      content.append('!');
    }
    return content.toString();
  }
}
