package fingering.page.staff;

import fingering.page.staff.Column.Cell;
import fingering.svg.Svg;
import fingering.svg.TextWidth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Draws the lane of a plan: fingers next to the staff, then strings, then positions. */
final class LaneDrawing {
  /** Pixels from the start of a position to the middle of its first note. */
  static final double LEAD = 6;

  private static final double FINGER_ROW = 15;
  private static final double STRING_ROW = 12;
  private static final double LABEL_ROW = 15;
  private static final double ARROW = 10;

  private final int lane;
  private final int stack;
  private final boolean over;
  private final double top;

  /**
   * Creates a drawing of a lane.
   *
   * @param lane its index
   * @param stack the largest number of fingers above one another
   * @param over whether it is above the staff
   * @param top the y of its upper edge
   */
  LaneDrawing(int lane, int stack, boolean over, double top) {
    this.lane = lane;
    this.stack = stack;
    this.over = over;
    this.top = top;
  }

  static double height(int stack) {
    return LABEL_ROW + STRING_ROW + FINGER_ROW * stack + 2;
  }

  static double fingerWidth(String finger) {
    return 2 * Math.ceil(TextWidth.bold(finger, StaffStyle.FINGER) / 2 + 2);
  }

  static double stringWidth(String string) {
    return string.isEmpty() ? 0 : TextWidth.of(string, StaffStyle.STRING);
  }

  static double labelTextWidth(String label) {
    return TextWidth.of(label, StaffStyle.LABEL);
  }

  static double arrowWidth(Cell cell) {
    return cell.shift().isPresent() ? ARROW : 2;
  }

  private double labelY() {
    return over ? top + 11 : top + height(stack) - 4;
  }

  private double stringY() {
    return over ? top + LABEL_ROW + 9 : top + FINGER_ROW * stack + 11;
  }

  /** The baseline of the lowest finger in a stack of that many. */
  private double fingerY(int fingers) {
    double rows = top + (over ? LABEL_ROW + STRING_ROW : 0);
    double bottom = rows + FINGER_ROW * stack - 3;
    return over ? bottom : bottom - FINGER_ROW * (stack - fingers);
  }

  /**
   * Draws the fingers, strings and positions of a piece.
   *
   * @param held whether the hand is already in a position at the start of the piece
   */
  void draw(Svg svg, StripPiece span, boolean held) {
    StringBuilder boxes = new StringBuilder();
    Row plain = new Row(svg, "finger");
    Row changed = new Row(svg, "changed");
    for (Column column : span.columns) {
      Cell cell = column.cells.get(lane);
      double y = fingerY(cell.fingers().size());
      for (String finger : cell.fingers()) {
        if (cell.differs()) {
          double width = fingerWidth(finger);
          boxes.append('M').append(Svg.point(column.x - width / 2, y - 11));
          boxes.append("h%sv14h-%sz".formatted(Svg.number(width), Svg.number(width)));
        }
        (cell.differs() ? changed : plain).add(column.x, y, finger);
        y -= FINGER_ROW;
      }
      if (!cell.string().isEmpty()) {
        svg.text("string", column.x, stringY(), cell.string());
      }
    }
    if (boxes.length() > 0) {
      svg.path("differs", boxes.toString());
    }
    plain.draw();
    changed.draw();
    positions(svg, span, held);
  }

  private void positions(Svg svg, StripPiece span, boolean held) {
    double y = labelY() - 3.5;
    double tick = over ? 5 : -5;
    StringBuilder lines = new StringBuilder();
    List<Column> columns = span.columns;
    double from = 0;
    for (int i = 0; i <= columns.size(); i++) {
      boolean end = i == columns.size();
      if (!end && columns.get(i).cells.get(lane).label().isEmpty()) {
        continue;
      }
      double to = end ? span.width + 0.5 : columns.get(i).x - LEAD - 3;
      if (to - from > 3 && (held || from > 0)) {
        lines.append(
            "M%sH%s%s"
                .formatted(Svg.point(from, y), Svg.number(to), end ? "" : "v" + Svg.number(tick)));
      } else if (!end && from > 0 && to > 0) {
        lines.append("M%sv%s".formatted(Svg.point(to, y), Svg.number(tick)));
      }
      if (!end) {
        from = label(svg, columns.get(i), y);
      }
    }
    if (lines.length() > 0) {
      svg.path("bracket", lines.toString());
    }
  }

  /** Draws the name of a position, and returns the x where it ends. */
  private double label(Svg svg, Column column, double y) {
    Cell cell = column.cells.get(lane);
    double x = column.x - LEAD;
    cell.shift()
        .ifPresent(to -> svg.use(to == Lane.Direction.UP ? "g-shift-u" : "g-shift-d", x + 4, y));
    double text = x + arrowWidth(cell);
    svg.text("label", text, y + 3.5, cell.label());
    return text + labelTextWidth(cell.label()) + 2;
  }

  /** Draws the plan's letter and the position at the beginning of a row. */
  void head(Svg svg, String key, String position, double left) {
    double y = labelY();
    svg.text("key", left + 10, fingerY(1), key);
    svg.circle("o", left + 10, fingerY(1) - 4, 7);
    if (!position.isEmpty()) {
      svg.text("label", left + 2, y, position);
    }
  }

  /** Fingers of one style; those of one letter at the same height are drawn together. */
  private static final class Row {
    /** Signs drawn behind a finger, which stays centred on its note. */
    private static final String BEHIND = "!°";

    private static final double SIGN = 6.5;

    private final Svg svg;
    private final String style;
    private final Map<Double, List<Double>> xs = new TreeMap<>();
    private final Map<Double, StringBuilder> letters = new TreeMap<>();
    private final List<Longer> longer = new ArrayList<>();

    Row(Svg svg, String style) {
      this.svg = svg;
      this.style = style;
    }

    void add(double x, double y, String finger) {
      boolean behind = finger.length() == 2 && BEHIND.indexOf(finger.charAt(1)) >= 0;
      if (finger.length() > 1 && !behind) {
        longer.add(new Longer(x, y, finger));
        return;
      }
      letter(x, y, finger.charAt(0));
      if (behind) {
        letter(x + SIGN, y, finger.charAt(1));
      }
    }

    private void letter(double x, double y, char letter) {
      xs.computeIfAbsent(y, height -> new ArrayList<>()).add(x);
      letters.computeIfAbsent(y, height -> new StringBuilder()).append(letter);
    }

    void draw() {
      xs.forEach((y, row) -> svg.letters(style, y, row, letters.get(y).toString()));
      longer.forEach(one -> svg.text(style, one.x(), one.y(), one.finger()));
    }

    private record Longer(double x, double y, String finger) {}
  }
}
