package fingering.cli.chart;

import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.fingerboard.Chart;
import fingering.fingerboard.Chart.Cell;
import fingering.fingerboard.Chart.KeyRelation;
import fingering.fingerboard.Chart.Row;
import fingering.tables.OpenString;
import fingering.tables.Position;
import java.util.List;

/** A chart as text: the strings run down the page, with the lowest at the left. */
public final class ChartText {
  private static final int WIDEST_CELL = 18;

  private final Chart chart;
  private final TextStyle style;
  private final int columns;
  private final int left;
  private final int cell;
  private final StringBuilder text = new StringBuilder();

  private ChartText(Chart chart, int columns, TextStyle style) {
    this.chart = chart;
    this.style = style;
    this.columns = columns;
    left = chart.hand().isPresent() ? 12 : 18;
    cell = Math.min(WIDEST_CELL, (columns - left) / chart.strings().size());
  }

  /** Returns the chart. */
  public static String of(Chart chart, int columns, TextStyle style) {
    ChartText page = new ChartText(chart, columns, style);
    page.heading();
    if (chart.strings().size() == 1) {
      new ChartStringText(chart, columns, style, page.text).write();
    } else {
      page.strings();
    }
    page.legend();
    return page.text.toString();
  }

  private void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }

  private void paragraph(String paragraph) {
    TextLayout.wrap(paragraph, columns, 2).forEach(this::line);
  }

  private void heading() {
    line(style.bold(ChartWords.title(chart)));
    ChartWords.facts(chart).forEach(this::paragraph);
    line("");
  }

  private void strings() {
    StringBuilder names = new StringBuilder(TextLayout.pad(margin("mm", "st.", "pos."), left));
    for (OpenString string : chart.strings()) {
      names.append(TextLayout.pad(ChartWords.stringName(string), cell));
    }
    line(style.bold(names.toString()));
    for (Row row : chart.rows()) {
      row(row);
      if (row.semitones() == 0) {
        nut();
      }
    }
    line("");
  }

  /**
   * The text to the left of the strings: millimetres, semitones and, without a hand, the position.
   */
  private String margin(String millimetres, String semitones, String position) {
    String numbers = TextLayout.padLeft(millimetres, 5) + TextLayout.padLeft(semitones, 5);
    return chart.hand().isPresent() ? numbers : numbers + "  " + position;
  }

  private void nut() {
    String string = "╪" + "═".repeat(cell - 1);
    String strings = string.repeat(chart.strings().size());
    line(" ".repeat(left) + strings.substring(0, strings.length() - cell / 2));
  }

  private void row(Row row) {
    String position = row.positions().stream().findFirst().map(Position::display).orElse("");
    StringBuilder line =
        new StringBuilder(
            TextLayout.pad(
                margin(
                    Long.toString(Math.round(row.millimetres())),
                    Integer.toString(row.semitones()),
                    position),
                left));
    for (Cell note : row.cells()) {
      String string = row.semitones() == 0 ? "  " : "│ ";
      line.append(string).append(styled(note, TextLayout.pad(content(note), cell - 2)));
    }
    line(line.toString());
  }

  private String styled(Cell note, String content) {
    return ChartWords.rings(note)
        ? style.marked(content)
        : note.relation() == KeyRelation.NAMED ? content : style.dim(content);
  }

  /** Name, fingers and ringing string; fewer of these if the column is narrow. */
  private String content(Cell note) {
    if (note.names().isEmpty()) {
      return "·";
    }
    String fingers = chart.hand().isEmpty() ? "" : " " + fingers(note);
    String rings =
        ChartWords.rings(note) ? " " + ChartWords.RINGS + note.rings().get(0).roman() : "";
    List<String> fuller =
        List.of(
            ChartWords.name(note, true) + fingers + rings,
            ChartWords.name(note, false) + fingers + rings,
            ChartWords.name(note, false) + rings);
    return fuller.stream()
        .map(String::stripTrailing)
        .filter(content -> content.length() <= cell - 3)
        .findFirst()
        .orElse(ChartWords.name(note, false));
  }

  private static String fingers(Cell note) {
    return note.semitones() == 0 ? "0" : ChartWords.fingers(note);
  }

  private void legend() {
    line("mm    from the nut          st.   semitones above the open string");
    if (chart.hand().isEmpty() && chart.strings().size() > 1) {
      line("pos.  the position whose first finger is there");
    }
    if (ChartWords.any(chart, ChartWords::rings)) {
      paragraph("°II   rings with the open string II, in unison or octaves");
    }
    if (ChartWords.fingersShown(chart)) {
      fingersLegend();
    }
    if (ChartWords.any(chart, note -> note.relation() == KeyRelation.RAISED)) {
      line("( )   raised 6th or 7th of the minor key");
    }
    if (ChartWords.any(chart, note -> note.relation() == KeyRelation.OUTSIDE)) {
      line("·     not in the key");
    }
    line("");
    ChartWords.hints(chart).forEach(this::paragraph);
    ChartWords.advice(chart).forEach(this::paragraph);
  }

  private void fingersLegend() {
    if (ChartWords.extended(chart)) {
      line("x     before a finger: an extended finger");
    }
    if (chart.strings().size() > 1 && ChartWords.any(chart, ChartWords::fingersDifferByName)) {
      line("2/3   one finger for each name of the note");
    }
  }
}
