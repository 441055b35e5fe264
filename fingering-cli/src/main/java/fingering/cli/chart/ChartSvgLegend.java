package fingering.cli.chart;

import fingering.cli.chart.SvgPage.Anchor;
import fingering.cli.terminal.TextLayout;
import fingering.fingerboard.Chart;
import fingering.fingerboard.Chart.KeyRelation;
import java.util.ArrayList;
import java.util.List;

/** The legend below a drawn chart, with advice on using it. */
final class ChartSvgLegend {
  /** The average width of a letter in common fonts, as a share of the font size. */
  private static final double LETTER = 0.52;

  private final Chart chart;
  private final SvgPage page;
  private final ChartSvgLayout layout;
  private final double unit;
  private final double size;

  ChartSvgLegend(Chart chart, SvgPage page, ChartSvgLayout layout) {
    this.chart = chart;
    this.page = page;
    this.layout = layout;
    unit = layout.unit();
    size = (chart.hand().isEmpty() ? 0.55 : 0.27) * unit;
  }

  /** Writes the lines below a y, and returns the y at which they end. */
  double write(double top) {
    double y = top;
    for (String line : lines()) {
      List<String> wrapped =
          TextLayout.wrap(line, (int) ((layout.width() - unit) / (size * LETTER)), 0);
      for (String part : wrapped) {
        page.text(0.5 * unit, y, size, Anchor.START, false, part);
        y += 1.35 * size;
      }
    }
    return y;
  }

  private List<String> lines() {
    List<String> lines = new ArrayList<>(ChartWords.facts(chart));
    if (layout.cutShort()) {
      lines.add("Double line: the string between nut and hand is shortened; the rest is to scale.");
    } else {
      lines.add("Distances from the nut in millimetres, to scale along the string.");
    }
    if (chart.hand().isEmpty()) {
      lines.add(
          chart.strings().size() == 1
              ? "At the right: position and finger."
              : "At the right: the position whose first finger is there.");
    }
    if (ChartWords.any(chart, ChartWords::rings)) {
      lines.add("Double ring, °II: rings with the open string II, in unison or octaves.");
    }
    if (ChartWords.extended(chart)) {
      lines.add("x, dashed ring: an extended finger.");
    }
    if (chart.hand().isPresent() && ChartWords.any(chart, ChartWords::fingersDifferByName)) {
      lines.add("2/3: one finger for each name of the note.");
    }
    if (ChartWords.any(chart, note -> note.relation() == KeyRelation.RAISED)) {
      lines.add("(  ): raised 6th or 7th of the minor key.");
    }
    lines.addAll(ChartWords.advice(chart));
    return lines;
  }
}
