package fingering.cli.terminal;

import java.util.ArrayList;
import java.util.List;

/** Columns and lines of plain text. */
public final class TextLayout {
  private TextLayout() {}

  /** The text, padded with spaces on the right to a width. */
  public static String pad(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }

  /** The text, padded with spaces on the left to a width. */
  public static String padLeft(String text, int width) {
    return " ".repeat(Math.max(0, width - text.length())) + text;
  }

  /** The items in order, in blocks of the given size or, if that is below 1, of one item each. */
  public static <T> List<List<T>> blocks(List<T> items, int blockSize) {
    List<List<T>> blocks = new ArrayList<>();
    int size = Math.max(1, blockSize);
    for (int from = 0; from < items.size(); from += size) {
      blocks.add(items.subList(from, Math.min(items.size(), from + size)));
    }
    return blocks;
  }

  /** The text wrapped to a width; all lines but the first are indented. */
  public static List<String> wrap(String text, int width, int indent) {
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
