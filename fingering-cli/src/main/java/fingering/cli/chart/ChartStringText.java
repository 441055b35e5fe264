package fingering.cli.chart;

import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.fingerboard.Chart;
import fingering.fingerboard.Chart.Cell;
import fingering.fingerboard.Chart.Row;
import java.util.List;
import java.util.stream.Collectors;

/** A chart of one string as text, with all fingers and positions of each note. */
final class ChartStringText {
  private static final int NUMBERS = 10;
  private static final int NOTE = 12;
  private static final int RINGS = 17;

  private final Chart chart;
  private final int columns;
  private final TextStyle style;
  private final StringBuilder text;

  ChartStringText(Chart chart, int columns, TextStyle style, StringBuilder text) {
    this.chart = chart;
    this.columns = columns;
    this.style = style;
    this.text = text;
  }

  void write() {
    line(
        style.bold(
            TextLayout.pad("   mm  st.", NUMBERS + 2)
                + TextLayout.pad(ChartWords.stringName(chart.strings().get(0)), NOTE)
                + TextLayout.pad("rings with", RINGS)
                + "position and finger"));
    for (Row row : chart.rows()) {
      row(row, row.cells().get(0));
      if (row.semitones() == 0) {
        line(" ".repeat(NUMBERS + 2) + "╪" + "═".repeat(NOTE - 2));
      }
    }
    line("");
  }

  private void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }

  private void row(Row row, Cell note) {
    String numbers =
        TextLayout.padLeft(Long.toString(Math.round(row.millimetres())), 5)
            + TextLayout.padLeft(Integer.toString(row.semitones()), 5);
    String string = row.semitones() == 0 ? "  " : "│ ";
    String name = note.names().isEmpty() ? "·" : ChartWords.name(note, true);
    String head =
        TextLayout.pad(numbers, NUMBERS + 2)
            + string
            + TextLayout.pad(name, NOTE - 2)
            + TextLayout.pad(rings(note), RINGS);
    List<String> fingerings =
        TextLayout.wrap(NoteFingerings.of(chart, note), columns - head.length(), 0);
    line(
        ChartWords.rings(note) ? style.marked(head) + fingerings.get(0) : head + fingerings.get(0));
    String below =
        TextLayout.pad(" ".repeat(NUMBERS + 2) + string.charAt(0), NUMBERS + 2 + NOTE + RINGS);
    fingerings.subList(1, fingerings.size()).forEach(more -> line(below + more));
  }

  private static String rings(Cell note) {
    return ChartWords.rings(note)
        ? note.rings().stream()
            .map(open -> ChartWords.RINGS + open.roman() + " " + ChartWords.interval(note, open))
            .collect(Collectors.joining(", "))
        : "";
  }
}
