package fingering.cli.text;

import fingering.cli.student.ScoringContext;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.music.Note;
import fingering.page.music.PrintedSigns;
import fingering.page.music.ShiftDirection;
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

  /** Stands for the fingering of a note that the instrument does not have. */
  private static final String NO_FINGER = "–";

  private final Comparison comparison;
  private final TextStyle style;

  /** The plans in blocks that fit side by side. */
  private final List<List<Plan>> plans;

  private final int cell;

  /** Selects the notes to print. */
  private final Predicate<PlannedNote> printed;

  private final boolean whole;

  private final StringBuilder text = new StringBuilder();

  private ComparisonText(
      Comparison comparison,
      Predicate<PlannedNote> printed,
      boolean whole,
      int columns,
      TextStyle style) {
    this.comparison = comparison;
    this.printed = printed;
    this.whole = whole;
    this.style = style;
    plans = TextLayout.blocks(comparison.plans(), (columns - NOTE_COLUMNS) / NARROWEST);
    cell = Math.max(NARROWEST, Math.min(24, (columns - NOTE_COLUMNS) / plans.get(0).size()));
  }

  /** All notes of all plans, and the legend. */
  static String notes(Comparison comparison, int columns, TextStyle style) {
    ComparisonText page = new ComparisonText(comparison, note -> true, true, columns, style);
    page.plans.forEach(page::notes);
    page.legend();
    return page.text.toString();
  }

  /** Only the heading, some of the notes, and the legend. */
  static String some(
      Comparison comparison,
      ScoringContext scoring,
      Predicate<PlannedNote> printed,
      int columns,
      TextStyle style) {
    ComparisonText page = new ComparisonText(comparison, printed, false, columns, style);
    HeadingText.of(comparison.passage(), scoring, columns, style).forEach(page::line);
    page.plans.forEach(page::notes);
    page.legend();
    return page.text.toString();
  }

  private void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }

  private void notes(List<Plan> shown) {
    StringBuilder head = new StringBuilder(TextLayout.pad("  m.  beat  note", NOTE_COLUMNS));
    for (Plan plan : shown) {
      head.append(TextLayout.pad(plan.name(), cell));
    }
    line(style.bold(head.toString()));
    Plan first = comparison.plans().get(0);
    Rows rows = new Rows(shown.size());
    for (int i = 0; i < first.notes().size(); i++) {
      PlannedNote planned = first.notes().get(i);
      if (printed.test(planned)) {
        rows.planned(planned, i, shown);
      }
    }
    rows.end();
    line("");
  }

  /** The rows of the notes, with those that have no finger between them. */
  private final class Rows {
    private final int plansShown;
    private final List<Note> unplayable;
    private int next;
    private int measure = -1;
    private int moment = -1;

    private Rows(int plansShown) {
      this.plansShown = plansShown;
      unplayable = whole ? comparison.passage().unplayable() : List.of();
    }

    private void planned(PlannedNote planned, int index, List<Plan> shown) {
      while (next < unplayable.size() && startsBefore(unplayable.get(next), planned.note())) {
        unplayable(unplayable.get(next++));
      }
      boolean differs = comparison.differs(index);
      StringBuilder row = row(planned.note(), planned.moment() != moment, differs);
      moment = planned.moment();
      for (Plan plan : shown) {
        String content = TextLayout.pad(content(plan, index), cell);
        row.append(differs ? style.marked(content) : content);
      }
      line(row.toString());
    }

    private void end() {
      while (next < unplayable.size()) {
        unplayable(unplayable.get(next++));
      }
    }

    private void unplayable(Note note) {
      line(
          row(note, true, false)
              .append(TextLayout.pad(NO_FINGER, cell).repeat(plansShown))
              .toString());
      moment = -1;
    }

    private StringBuilder row(Note note, boolean newMoment, boolean differs) {
      boolean newMeasure = note.place().measureIndex() != measure;
      measure = note.place().measureIndex();
      return new StringBuilder()
          .append(TextLayout.padLeft(newMeasure ? note.place().measure() : "", 4))
          .append(TextLayout.padLeft(newMoment ? note.place().beatText() : "+", 6))
          .append("  ")
          .append(TextLayout.pad(note.written().display(), 5))
          .append(differs ? "≠  " : "   ");
    }
  }

  private static boolean startsBefore(Note one, Note other) {
    return one.start().compareTo(other.start()) < 0
        || (one.start().equals(other.start()) && one.midi() < other.midi());
  }

  private void legend() {
    line("String, finger, position.  ↑ ↓ shift  × crossing  ×× skips a string");
    harmonics(comparison.plans().get(0));
    line(
        "! outside the plan's positions"
            + (comparison.plans().size() > 1 ? "  ≠ the plans differ" : "")
            + (whole && !comparison.passage().unplayable().isEmpty()
                ? "  " + NO_FINGER + " not on this instrument"
                : ""));
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
        .ifPresent(direction -> content.append(direction == ShiftDirection.UP ? '↑' : '↓'));
    content.append("×".repeat(Math.min(2, note.crossing())));
    if (note.outside()) {
      content.append('!');
    }
    return content.toString();
  }
}
