package fingering.cli.terminal;

import java.util.ArrayList;
import java.util.List;

/** Columns and lines of plain text. */
public final class TextLayout {
  private TextLayout() {}

  /** The text, filled with blanks on the right to a width. */
  public static String pad(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }

  /** The text, filled with blanks on the left to a width. */
  public static String padLeft(String text, int width) {
    return " ".repeat(Math.max(0, width - text.length())) + text;
  }

  /** The things in their order, in blocks of at most so many, but of one at least. */
  public static <T> List<List<T>> blocks(List<T> things, int most) {
    List<List<T>> blocks = new ArrayList<>();
    int size = Math.max(1, most);
    for (int from = 0; from < things.size(); from += size) {
      blocks.add(things.subList(from, Math.min(things.size(), from + size)));
    }
    return blocks;
  }

  /** The text in lines no wider than a width, all but the first indented. */
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
