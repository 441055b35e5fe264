package fingering.cli.chart;

import fingering.fingerboard.Chart;
import fingering.fingerboard.Chart.Row;
import java.util.List;

/**
 * The places of everything in a drawn chart, in millimetres of the string. Places along the string
 * are to scale, except that the empty stretch between the nut and a high hand is shortened.
 */
final class ChartSvgLayout {
  private static final int UNITS_OF_WHOLE = 34;
  private static final double WIDEST_LEAD = 2.6;
  private static final double LEAD = 1.5;

  private final Chart chart;
  private final List<Row> stopped;
  private final double unit;
  private final double cut;

  ChartSvgLayout(Chart chart) {
    this.chart = chart;
    stopped = chart.rows().subList(1, chart.rows().size());
    unit =
        chart.hand().isPresent()
            ? narrowest()
            : chart.instrument().fingerboardLength() / UNITS_OF_WHOLE;
    double bare = stopped.isEmpty() ? 0 : stopped.get(0).millimetres();
    cut = chart.hand().isPresent() && bare > WIDEST_LEAD * unit ? bare - LEAD * unit : 0;
  }

  /** The least distance between two rows; with fewer than two rows, a twentieth of the string. */
  private double narrowest() {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 1; i < stopped.size(); i++) {
      least = Math.min(least, gapAbove(i));
    }
    return Double.isFinite(least) ? least : chart.instrument().stringLength() / 20;
  }

  private double gapAbove(int index) {
    return stopped.get(index).millimetres() - stopped.get(index - 1).millimetres();
  }

  /** The unit of all sizes other than places on the string: about a semitone. */
  double unit() {
    return unit;
  }

  /** The distance of a row from the row before it, or the unit for the first. */
  double gap(Row row) {
    int index = stopped.indexOf(row);
    return index < 1 ? unit : gapAbove(index);
  }

  /** The font size of that many units, or less where rows are close together. */
  double letters(double units, Row row) {
    return Math.min(units * unit, 0.92 * gap(row));
  }

  /** The font size of the title. */
  double title() {
    return (chart.hand().isPresent() ? 0.5 : 0.9) * unit;
  }

  /** Whether the stretch between the nut and the hand is shortened. */
  boolean cutShort() {
    return cut > 0;
  }

  double left() {
    return 2.4 * unit;
  }

  /** The distance between drawn strings, wider than on the instrument, to leave space for names. */
  double spacing() {
    return (chart.hand().isPresent() ? 2.3 : 4.2) * unit;
  }

  double string(int index) {
    return left() + 0.9 * unit + index * spacing();
  }

  double right() {
    return string(chart.strings().size() - 1) + spacing() * (chart.hand().isPresent() ? 0.78 : 0.9);
  }

  double width() {
    double least =
        Math.max(
            0.64 * title() * ChartWords.title(chart).length() + unit,
            right() + fingeringsWidth() + unit);
    return Math.max(
        Math.max(least, 10 * unit), right() + (chart.hand().isPresent() ? 0.8 : 2.4) * unit);
  }

  /** The width of the fingerings beside a single string. */
  private double fingeringsWidth() {
    if (chart.strings().size() > 1 || chart.hand().isPresent()) {
      return 0;
    }
    int longest =
        stopped.stream()
            .mapToInt(row -> NoteFingerings.of(chart, row.cells().get(0)).length())
            .max()
            .orElse(0);
    return 0.31 * unit * longest;
  }

  double nut() {
    return (chart.hand().isPresent() ? 3.6 : 4.2) * unit;
  }

  /** The y at which a row is drawn. */
  double row(Row row) {
    return row.semitones() == 0 ? nut() - 0.75 * unit : nut() + row.millimetres() - cut;
  }

  /** The y at which the drawn fingerboard ends: its real end, or a little below the hand. */
  double bottom() {
    return chart.hand().isPresent()
        ? row(chart.rows().get(chart.rows().size() - 1)) + 0.8 * unit
        : nut() + chart.instrument().fingerboardLength() + 0.3 * unit;
  }
}
