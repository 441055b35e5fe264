package fingering.userfile;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Changes some keys in the text of a file. The lines of the other keys stay, with the remarks above
 * and beside them.
 */
final class TextEdit {
  private static final Pattern KEY = Pattern.compile("([a-z]+(?:-[a-z]+)*):(\\s.*)?");

  /** The lines of a key, and the empty lines and remarks above it. */
  private record Block(String key, List<String> above, List<String> lines) {}

  private final List<Block> blocks = new ArrayList<>();

  /** The lines after the last key. */
  private final List<String> rest = new ArrayList<>();

  TextEdit(String text) {
    for (String line : text.lines().toList()) {
      Matcher key = KEY.matcher(line);
      if (key.matches()) {
        blocks.add(new Block(key.group(1), new ArrayList<>(rest), new ArrayList<>(List.of(line))));
        rest.clear();
      } else if (blocks.isEmpty() || line.isBlank() || line.startsWith("#")) {
        rest.add(line);
      } else {
        // A remark between the lines of a value belongs to the value.
        List<String> lines = blocks.get(blocks.size() - 1).lines();
        lines.addAll(rest);
        rest.clear();
        lines.add(line);
      }
    }
  }

  /**
   * The text after a change.
   *
   * @param old the lines of each key as they would be written before the change
   * @param wanted the same after it
   */
  String edited(ImmutableMap<String, String> old, ImmutableMap<String, String> wanted) {
    StringBuilder text = new StringBuilder();
    Set<String> written = new HashSet<>();
    for (Block block : blocks) {
      block.above().forEach(line -> text.append(line).append('\n'));
      String now = wanted.getOrDefault(block.key(), "");
      written.add(block.key());
      if (now.equals(old.getOrDefault(block.key(), ""))) {
        block.lines().forEach(line -> text.append(line).append('\n'));
      } else if (!now.isEmpty()) {
        text.append(withRemark(now, block));
      }
    }
    wanted.forEach((key, lines) -> text.append(written.contains(key) ? "" : lines));
    rest.forEach(line -> text.append(line).append('\n'));
    return text.toString();
  }

  /** The new lines of a key, with the remark beside the old line if both are a single line. */
  private static String withRemark(String lines, Block block) {
    String remark = remark(block.lines().get(0));
    boolean single = block.lines().size() == 1 && lines.indexOf('\n') == lines.length() - 1;
    return single && !remark.isEmpty() ? lines.stripTrailing() + "  " + remark + "\n" : lines;
  }

  /** The remarks of a text that are not in a later one. */
  static ImmutableList<String> lost(String before, String after) {
    List<String> kept = remarks(after);
    List<String> lost = new ArrayList<>(remarks(before));
    kept.forEach(lost::remove);
    return ImmutableList.copyOf(lost);
  }

  private static List<String> remarks(String text) {
    return text.lines().map(TextEdit::remark).filter(remark -> !remark.isEmpty()).toList();
  }

  /** The remark at the end of a line; empty if there is none. */
  private static String remark(String line) {
    char quote = 0;
    char before = ' ';
    for (int i = 0; i < line.length(); i++) {
      char sign = line.charAt(i);
      if (quote != 0) {
        if (quote == '"' && sign == '\\') {
          i++;
        } else if (sign == quote) {
          quote = 0;
        }
      } else if ((sign == '"' || sign == '\'') && " [{,".indexOf(before) >= 0) {
        quote = sign;
      } else if (sign == '#' && (before == ' ' || before == '\t')) {
        return line.substring(i);
      }
      before = sign;
    }
    return "";
  }
}
