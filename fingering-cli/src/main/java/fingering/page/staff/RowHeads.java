package fingering.page.staff;

import java.util.LinkedHashMap;
import java.util.Map;

/** The heads of rows. Many pieces have the same head, so each is defined once and reused. */
final class RowHeads {
  private final Map<String, String> ids = new LinkedHashMap<>();

  /** An element that shows a drawing, which is defined once under its own id. */
  String use(String drawing) {
    String id = ids.computeIfAbsent(drawing, fresh -> "h" + ids.size());
    return "<use class=\"head\" href=\"#" + id + "\"/>";
  }

  /** All drawings, for a {@code defs} element. */
  String shapes() {
    StringBuilder shapes = new StringBuilder();
    ids.forEach(
        (drawing, id) ->
            shapes.append("<g id=\"").append(id).append("\">").append(drawing).append("</g>"));
    return shapes.toString();
  }

  /** Drawings or uses of them with a prefix before each id. */
  static String withIds(String prefix, String elements) {
    return elements
        .replace("<g id=\"h", "<g id=\"" + prefix + "h")
        .replace("href=\"#h", "href=\"#" + prefix + "h");
  }
}
