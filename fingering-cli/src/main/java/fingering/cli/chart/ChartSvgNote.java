package fingering.cli.chart;

import com.google.common.base.Splitter;
import fingering.cli.chart.SvgPage.Anchor;
import fingering.fingerboard.Chart.Cell;
import fingering.fingerboard.Chart.KeyRelation;
import java.util.List;

/** Draws the notes of a chart: a disc on the string, with the name beside it. */
final class ChartSvgNote {
  private static final Splitter BLANK = Splitter.on(' ');
  private static final String PAPER = "fill=\"#fff\" stroke=\"#111\"";

  private final SvgPage page;
  private final boolean whole;
  private final double unit;
  private final double letters;

  /**
   * Creates a drawing of the notes of a row.
   *
   * @param whole whether the whole fingerboard is drawn, with small discs
   * @param unit the unit of the drawing
   * @param letters the font size of this row
   */
  ChartSvgNote(SvgPage page, boolean whole, double unit, double letters) {
    this.page = page;
    this.whole = whole;
    this.unit = unit;
    this.letters = letters;
  }

  void draw(Cell note, double x, double y) {
    if (note.names().isEmpty()) {
      return;
    }
    String fingers = note.semitones() == 0 ? "0" : ChartWords.fingers(note);
    if (whole || fingers.isEmpty()) {
      small(note, x, y);
    } else {
      List<String> each = BLANK.splitToList(fingers);
      disc(note, each.get(0), x, y);
      beside(note, String.join(" ", each.subList(1, each.size())), x, y);
    }
  }

  private void small(Cell note, double x, double y) {
    double size = letters;
    boolean named = note.relation() == KeyRelation.NAMED;
    double radius = 0.26 * size;
    if (ChartWords.rings(note)) {
      page.circle(x, y, 1.9 * radius, PAPER + strokeWidth(0.14 * size));
      page.circle(x, y, radius, "fill=\"#111\"");
    } else {
      page.circle(x, y, radius, named ? "fill=\"#111\"" : PAPER + strokeWidth(0.1 * size));
    }
    double beside = x + 0.62 * size;
    page.onWood(beside, y, size, named, ChartWords.name(note, true));
    if (ChartWords.rings(note)) {
      double after = beside + 0.66 * size * (ChartWords.name(note, true).length() + 0.6);
      page.onWood(after, y, 0.8 * size, false, ringing(note));
    }
  }

  private static String strokeWidth(double width) {
    return " stroke-width=\"" + SvgPage.number(width) + "\"";
  }

  private void disc(Cell note, String finger, double x, double y) {
    double radius = 0.3 * unit;
    String dashes =
        finger.startsWith("x")
            ? " stroke-dasharray=\""
                + SvgPage.number(0.1 * unit)
                + " "
                + SvgPage.number(0.07 * unit)
                + "\""
            : "";
    if (ChartWords.rings(note)) {
      page.circle(x, y, radius + 0.1 * unit, PAPER + strokeWidth(0.035 * unit));
    }
    page.circle(x, y, radius, PAPER + strokeWidth(0.035 * unit) + dashes);
    double size =
        switch (finger.length()) {
          case 1 -> 0.38;
          case 2 -> 0.31;
          case 3 -> 0.27;
          default -> 0.2;
        };
    page.text(x, y, size * unit, Anchor.MIDDLE, true, finger);
  }

  /**
   * Writes the name to the right of the disc, and below it other fingers and the ringing string.
   */
  private void beside(Cell note, String others, double x, double y) {
    double left = x + (ChartWords.rings(note) ? 0.5 : 0.42) * unit;
    String below =
        (others.isEmpty() ? "" : "or " + others)
            + (ChartWords.rings(note) ? " " + ringing(note) : "");
    double up = below.isEmpty() ? 0 : 0.14 * unit;
    boolean named = note.relation() == KeyRelation.NAMED;
    page.onWood(left, y - up, letters, named, ChartWords.name(note, true));
    if (!below.isEmpty()) {
      page.onWood(left, y + 0.2 * unit, 0.24 * unit, false, below.strip());
    }
  }

  private static String ringing(Cell note) {
    return ChartWords.RINGS + note.rings().get(0).roman();
  }
}
