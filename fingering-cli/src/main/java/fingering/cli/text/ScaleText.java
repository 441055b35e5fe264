package fingering.cli.text;

import fingering.cli.student.ScoringContext;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.fingerboard.Placement;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.plan.PlannedNote;
import fingering.tables.RomanNumeral;
import fingering.verdict.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A planned scale as text, from left to right like a staff, with the fingers below the notes. */
public final class ScaleText {
  private static final int LABEL = 8;
  private static final String BAR = "│ ";
  private static final int NARROWEST = 5;

  /** The column of a moment, from top to bottom. */
  private record Cell(
      String measure,
      String note,
      String finger,
      String string,
      String position,
      boolean slurEnds,
      boolean slurContinues) {

    int width() {
      return 1
          + Math.max(
              Math.max(note.length(), finger.length()),
              Math.max(string.length(), position.length()));
    }
  }

  private final Plan plan;
  private final int columns;
  private final int cell;
  private final List<List<Cell>> measures;
  private final StringBuilder text = new StringBuilder();

  private ScaleText(Plan plan, int columns) {
    this.plan = plan;
    this.columns = columns;
    measures = measures();
    cell =
        measures.stream().flatMap(List::stream).mapToInt(Cell::width).reduce(NARROWEST, Math::max);
  }

  /** Returns the plan of a scale with its summary. */
  public static String of(Comparison alone, ScoringContext scoring, int columns, TextStyle style) {
    ScaleText page = new ScaleText(alone.plans().get(0), columns);
    HeadingText.of(alone.passage(), scoring, columns, style).forEach(page::line);
    page.systems().forEach(page::system);
    page.line("String (I is the highest) and position are shown where they change; 0 is open.");
    Verdict verdict = Verdict.of(alone, scoring.level());
    page.line("");
    TextLayout.wrap(String.join(" ", VerdictText.of(alone, scoring.level(), verdict)), columns, 0)
        .forEach(page::line);
    page.line("");
    page.text.append(StudentsText.of(alone.plans(), scoring.students(), columns, style));
    TextLayout.wrap(SummaryText.CARE, columns, 2).forEach(page::line);
    return page.text.toString();
  }

  private void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }

  private List<List<Cell>> measures() {
    Map<Integer, List<PlannedNote>> moments = new TreeMap<>();
    for (PlannedNote note : plan.notes()) {
      moments.computeIfAbsent(note.moment(), m -> new ArrayList<>()).add(note);
    }
    Map<Integer, List<Cell>> cells = new TreeMap<>();
    String strings = "";
    for (List<PlannedNote> notes : moments.values()) {
      int measure = notes.get(0).note().place().measureIndex();
      List<Cell> there = cells.computeIfAbsent(measure, m -> new ArrayList<>());
      String now = joined(notes, note -> RomanNumeral.of(note.placement().string()));
      there.add(cell(notes, there.isEmpty(), now.equals(strings) ? "" : now));
      strings = now;
    }
    return List.copyOf(cells.values());
  }

  private Cell cell(List<PlannedNote> notes, boolean first, String strings) {
    PlannedNote one = notes.get(0);
    int next = one.moment() + 1;
    boolean showPosition = one.moment() == 0 || notes.stream().anyMatch(PlannedNote::shift);
    Placement top = notes.get(notes.size() - 1).placement();
    return new Cell(
        first ? one.note().place().measure() : "",
        joined(notes, note -> note.note().written().display()),
        joined(notes, PlannedNote::finger),
        strings,
        showPosition ? top.frame().position().display() : "",
        plan.passage().moments().get(one.moment()).slurred(),
        next < plan.passage().moments().size() && plan.passage().moments().get(next).slurred());
  }

  private static String joined(List<PlannedNote> notes, Function<PlannedNote, String> content) {
    return notes.stream().map(content).collect(Collectors.joining("+"));
  }

  /** The measures in lines, as many in each as fit. A measure that is too long is split. */
  private List<List<List<Cell>>> systems() {
    List<List<List<Cell>>> systems = new ArrayList<>();
    int left = 0;
    for (List<Cell> measure : measures) {
      for (List<Cell> piece : TextLayout.blocks(measure, (columns - LABEL) / cell)) {
        int width = BAR.length() + piece.size() * cell;
        if (systems.isEmpty() || width > left) {
          systems.add(new ArrayList<>());
          // The last space of a line does not count, nor does a bar at its beginning.
          left = columns - LABEL + BAR.length() + 1;
        }
        systems.get(systems.size() - 1).add(piece);
        left -= width;
      }
    }
    return systems;
  }

  private void system(List<List<Cell>> pieces) {
    row("m.", pieces, " ".repeat(BAR.length()), Cell::measure);
    row("note", pieces, BAR, Cell::note);
    row("finger", pieces, BAR, Cell::finger);
    row("string", pieces, BAR, Cell::string);
    row("pos.", pieces, BAR, Cell::position);
    row("bow", pieces, BAR, this::bow);
    line("");
  }

  /** Adds a row of the system, unless it would be empty. */
  private void row(
      String label, List<List<Cell>> pieces, String bar, Function<Cell, String> content) {
    if (pieces.stream().flatMap(List::stream).map(content).allMatch(String::isEmpty)) {
      return;
    }
    line(
        TextLayout.pad(label, LABEL)
            + pieces.stream()
                .map(
                    piece ->
                        piece.stream()
                            .map(one -> TextLayout.pad(content.apply(one), cell))
                            .collect(Collectors.joining()))
                .collect(Collectors.joining(bar)));
  }

  /** The part of a slur below a note. */
  private String bow(Cell one) {
    if (one.slurContinues()) {
      return (one.slurEnds() ? "─" : "╰") + "─".repeat(cell - 1);
    }
    return one.slurEnds() ? "╯" : "";
  }
}
