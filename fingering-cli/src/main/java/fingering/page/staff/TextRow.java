package fingering.page.staff;

import fingering.page.svg.TextWidth;
import java.util.ArrayList;
import java.util.List;

/** Texts in a row of a piece, none over another. */
final class TextRow {
  /** Pixels from one line to the next. */
  static final double LINE = 13;

  private static final int LONGEST = 15;
  private static final double GAP = 7;
  private static final double INDENT = 3;

  /**
   * A text with its place.
   *
   * @param x where it begins
   * @param lines its lines
   * @param width the width of the longest
   */
  record Placed(double x, List<String> lines, double width) {}

  private record Wanted(double x, List<String> lines, double width) {}

  private final double size;
  private final List<Wanted> wanted = new ArrayList<>();

  TextRow(double size) {
    this.size = size;
  }

  /** Wants a text to begin at x; below one that begins there already. */
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

  /** The text in lines of a few letters, broken at blanks. */
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

  /** The width that the texts need at the least. */
  double needed() {
    return wanted.stream().mapToDouble(text -> text.width() + GAP).sum() + INDENT;
  }

  /** The texts where they are wanted, or as near as the width of the piece lets them be. */
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
