package fingering.page.staff;

import fingering.svg.TextWidth;
import java.util.ArrayList;
import java.util.List;

/** Texts in a row of a piece that do not overlap. */
final class TextRow {
  /** Pixels from one line to the next. */
  static final double LINE = 13;

  private static final int LONGEST = 15;
  private static final double GAP = 7;
  private static final double INDENT = 3;

  /**
   * A text and its place.
   *
   * @param x its left edge
   * @param lines its lines
   * @param width the width of the longest line
   */
  record Placed(double x, List<String> lines, double width) {}

  private record Wanted(double x, List<String> lines, double width) {}

  private final double size;
  private final List<Wanted> wanted = new ArrayList<>();

  TextRow(double size) {
    this.size = size;
  }

  /** Adds a text that should begin at x, below any text that already begins there. */
  void add(double x, String text) {
    List<String> lines = new ArrayList<>();
    if (!wanted.isEmpty() && wanted.get(wanted.size() - 1).x() == Math.max(INDENT, x)) {
      lines.addAll(wanted.remove(wanted.size() - 1).lines());
    }
    lines.addAll(lines(text));
    double width =
        lines.stream().mapToDouble(line -> TextWidth.bold(line, size)).max().orElseThrow();
    wanted.add(new Wanted(Math.max(INDENT, x), lines, width));
  }

  /** Breaks a text at spaces into short lines. */
  static List<String> lines(String text) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      if (line.length() > 0 && line.length() + 1 + word.length() > LONGEST) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() > 0 ? " " : "").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  /** The least width that the texts need. */
  double needed() {
    return wanted.stream().mapToDouble(text -> text.width() + GAP).sum() + INDENT;
  }

  /** The texts at their places, or as near as the width of the piece allows. */
  List<Placed> placed(double width) {
    double[] x = new double[wanted.size()];
    double free = INDENT;
    for (int i = 0; i < x.length; i++) {
      x[i] = Math.max(free, wanted.get(i).x());
      free = x[i] + wanted.get(i).width() + GAP;
    }
    double end = width;
    for (int i = x.length - 1; i >= 0; i--) {
      x[i] = Math.min(x[i], end - wanted.get(i).width() - GAP / 2);
      end = x[i] - GAP / 2;
    }
    List<Placed> placed = new ArrayList<>();
    for (int i = 0; i < x.length; i++) {
      placed.add(new Placed(x[i], wanted.get(i).lines(), wanted.get(i).width()));
    }
    return placed;
  }
}
