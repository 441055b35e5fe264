package fingering.cli.chart;

import fingering.cli.chart.SvgPage.Anchor;
import fingering.fingerboard.Chart;
import fingering.fingerboard.Chart.Cell;
import fingering.fingerboard.Chart.KeyRelation;
import fingering.fingerboard.Chart.Row;
import fingering.tables.OpenString;
import fingering.tables.Position;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A chart as a picture: the fingerboard from above, with the nut at the top and the lowest string
 * at the left.
 */
public final class ChartSvg {
  private static final String INK = "#111";
  private static final String TAPE = "#bbb";
  private static final String WOOD = "fill=\"" + SvgPage.WOOD + "\"";
  private static final double PIXELS_PER_UNIT_OF_HAND = 56;
  private static final double PIXELS_PER_UNIT_OF_WHOLE = 32;

  private final Chart chart;
  private final ChartSvgLayout layout;
  private final double unit;
  private final SvgPage page = new SvgPage();

  private ChartSvg(Chart chart) {
    this.chart = chart;
    layout = new ChartSvgLayout(chart);
    unit = layout.unit();
  }

  public static String of(Chart chart) {
    return new ChartSvg(chart).drawn();
  }

  private String drawn() {
    title();
    board();
    strings();
    chart.rows().forEach(this::row);
    double end = new ChartSvgLegend(chart, page, layout).write(layout.bottom() + unit);
    double scale = (whole() ? PIXELS_PER_UNIT_OF_WHOLE : PIXELS_PER_UNIT_OF_HAND) / unit;
    return page.document(
        layout.width(), end + 0.4 * unit, scale, ChartWords.title(chart), inWords());
  }

  private boolean whole() {
    return chart.hand().isEmpty();
  }

  private void title() {
    page.text(0.5 * unit, 0.9 * unit, layout.title(), Anchor.START, true, ChartWords.title(chart));
  }

  private void board() {
    double left = layout.string(0) - 0.5 * unit;
    double width = layout.right() - left;
    double nut = layout.nut();
    page.rect(left, nut, width, layout.bottom() - nut, WOOD);
    for (Row row : stopped()) {
      double y = layout.row(row);
      page.line(left, y, left + width, y, 0.02 * unit, TAPE);
    }
    page.line(left, nut, left, layout.bottom(), 0.04 * unit, INK);
    page.line(left + width, nut, left + width, layout.bottom(), 0.04 * unit, INK);
    if (whole()) {
      page.line(left, layout.bottom(), left + width, layout.bottom(), 0.04 * unit, INK);
    }
    page.rect(left, nut - 0.1 * unit, width, 0.2 * unit, "fill=\"" + INK + "\"");
    double label = layout.left() - 0.2 * unit;
    page.text(label, nut, labelUnits() * unit, Anchor.END, false, "0 mm");
  }

  private List<Row> stopped() {
    return chart.rows().subList(1, chart.rows().size());
  }

  private double labelUnits() {
    return whole() ? 0.55 : 0.3;
  }

  private void strings() {
    for (int i = 0; i < chart.strings().size(); i++) {
      OpenString string = chart.strings().get(i);
      double x = layout.string(i);
      double weight = (0.03 + 0.012 * string.number()) * unit;
      page.line(x, layout.nut(), x, layout.bottom(), weight, INK);
      double size = (whole() ? 0.75 : 0.42) * unit;
      page.text(
          x,
          layout.nut() - (whole() ? 1.8 : 1.55) * unit,
          size,
          Anchor.MIDDLE,
          true,
          ChartWords.stringName(string));
    }
    if (layout.cutShort()) {
      cut();
    }
  }

  /** Draws a white band across the strings where the stretch up to the hand is left out. */
  private void cut() {
    double left = layout.string(0) - 0.7 * unit;
    double right = layout.right() + 0.2 * unit;
    double y = layout.nut() + 0.55 * unit;
    page.rect(left, y, right - left, 0.16 * unit, "fill=\"#fff\"");
    page.line(left, y, right, y, 0.025 * unit, INK);
    page.line(left, y + 0.16 * unit, right, y + 0.16 * unit, 0.025 * unit, INK);
  }

  private void row(Row row) {
    double y = layout.row(row);
    double size = layout.letters(labelUnits(), row);
    if (row.semitones() > 0) {
      String millimetres = Long.toString(Math.round(row.millimetres()));
      page.text(layout.left() - 0.2 * unit, y, size, Anchor.END, false, millimetres);
    }
    String beside = whole() ? beside(row) : "";
    if (!beside.isEmpty()) {
      boolean bold = chart.strings().size() > 1;
      page.text(layout.right() + 0.4 * unit, y, size, Anchor.START, bold, beside);
    }
    for (int i = 0; i < row.cells().size(); i++) {
      new ChartSvgNote(page, whole(), unit, layout.letters(whole() ? 0.78 : 0.34, row))
          .draw(row.cells().get(i), layout.string(i), y);
    }
  }

  /**
   * The text to the right of the board: positions that begin at a row, or all fingerings of a
   * single string.
   */
  private String beside(Row row) {
    return ChartWords.fingersShown(chart)
        ? NoteFingerings.of(chart, row.cells().get(0))
        : row.positions().stream().map(Position::display).collect(Collectors.joining(", "));
  }

  /** The chart in words, for screen readers: string by string, with the notes upward. */
  private String inWords() {
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < chart.strings().size(); i++) {
      int index = i;
      words
          .append(ChartWords.stringName(chart.strings().get(i)))
          .append(" string: ")
          .append(
              chart.rows().stream()
                  .map(row -> row.cells().get(index))
                  .filter(note -> note.relation() != KeyRelation.OUTSIDE)
                  .map(this::inWords)
                  .collect(Collectors.joining(", ")))
          .append(". ");
    }
    return words.toString().strip();
  }

  private String inWords(Cell note) {
    String fingers =
        whole() ? "" : note.semitones() == 0 ? " open" : " finger " + ChartWords.fingers(note);
    String rings = ChartWords.rings(note) ? " rings with open " + note.rings().get(0).roman() : "";
    return ChartWords.name(note, true) + fingers + rings;
  }
}
