package fingering.sheet;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.ImmutableMap;
import fingering.userfile.UserText;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Writes audition sheets as YAML. */
final class SheetText {
  static final String SCALES = "scales";
  static final String EXCERPTS = "excerpts";

  /** Music that can be written on lines of its own: its first line shows how far it is indented. */
  private static final Pattern TUNE =
      Pattern.compile("(?:[!-~][ -~]*\n)(?:[ -~]*\n)*[!-~][ -~]*\n");

  private SheetText() {}

  /** The lines of each key that the sheet has, in their order. */
  static ImmutableMap<String, String> keys(SheetContent sheet) {
    ImmutableMap.Builder<String, String> keys = ImmutableMap.builder();
    for (String key : sheet.keys().keySet()) {
      keys.put(key, key + ": " + values(sheet.keys().get(key)) + "\n");
    }
    boolean scalesFirst =
        sheet.pieces().stream().findFirst().map(SheetContent.Piece::scale).orElse(true);
    for (boolean scale : new boolean[] {scalesFirst, !scalesFirst}) {
      List<SheetContent.Piece> pieces =
          sheet.pieces().stream().filter(piece -> piece.scale() == scale).toList();
      if (!pieces.isEmpty()) {
        String key = scale ? SCALES : EXCERPTS;
        keys.put(
            key,
            key
                + ":\n"
                + pieces.stream().map(piece -> piece(piece.keys())).collect(Collectors.joining()));
      }
    }
    return keys.buildOrThrow();
  }

  private static String piece(ImmutableListMultimap<String, String> keys) {
    StringBuilder text = new StringBuilder();
    for (String key : keys.keySet()) {
      text.append(text.isEmpty() ? "  - " : "    ").append(key).append(": ");
      String first = keys.get(key).get(0);
      if (TUNE.matcher(first).matches()) {
        text.append("|\n");
        first.lines().forEach(line -> text.append("      ").append(line).append('\n'));
      } else {
        text.append(values(keys.get(key))).append('\n');
      }
    }
    return text.toString();
  }

  private static String values(ImmutableList<String> values) {
    return values.size() == 1
        ? UserText.value(values.get(0))
        : values.stream().map(UserText::value).collect(Collectors.joining(", ", "[", "]"));
  }
}
