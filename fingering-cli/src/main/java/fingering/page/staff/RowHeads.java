package fingering.page.staff;

import java.util.LinkedHashMap;
import java.util.Map;

/** What can stand at the beginning of a row; many pieces have the same, which is drawn once. */
final class RowHeads {
  private final Map<String, String> ids = new LinkedHashMap<>();

  /** Shows a drawing, which is kept under a name of its own. */
  String use(String drawing) {
    String id = ids.computeIfAbsent(drawing, fresh -> "h" + ids.size());
    return "<use class=\"head\" href=\"#" + id + "\"/>";
  }

  /** All that is kept, for a {@code defs} element. */
  String shapes() {
    StringBuilder shapes = new StringBuilder();
    ids.forEach(
        (drawing, id) ->
            shapes.append("<g id=\"").append(id).append("\">").append(drawing).append("</g>"));
    return shapes.toString();
  }
}
