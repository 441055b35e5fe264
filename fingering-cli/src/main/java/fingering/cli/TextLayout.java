package fingering.cli;

import java.util.ArrayList;
import java.util.List;

/** Columns and lines of plain text. */
final class TextLayout {
  private TextLayout() {}

  /** The text, filled with blanks on the right to a width. */
  static String pad(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }

  /** The text, filled with blanks on the left to a width. */
  static String padLeft(String text, int width) {
    return " ".repeat(Math.max(0, width - text.length())) + text;
  }

  /** The text in lines no wider than a width, all but the first indented. */
  static List<String> wrap(String text, int width, int indent) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      if (line.length() > indent && line.length() + 1 + word.length() > width) {
        lines.add(line.toString());
        line = new StringBuilder(" ".repeat(indent));
      } else if (line.length() > 0) {
        line.append(' ');
      }
      line.append(word);
    }
    lines.add(line.toString());
    return lines;
  }
}
