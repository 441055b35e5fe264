package fingering.web.folder;

import com.google.common.hash.Hashing;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/**
 * Which text of a file a page shows. The page sends this back with a change, which is refused if
 * the file has another text by then.
 */
public final class Seen {
  /** The field of the form. */
  private static final String FIELD = "seen";

  private Seen() {}

  /** A mark that texts share only if they are equal. */
  public static String mark(String text) {
    return Hashing.sha256().hashString(text, StandardCharsets.UTF_8).toString();
  }

  /** The mark that a form sends; empty if it sends none. */
  public static String in(Map<String, String> fields) {
    return fields.getOrDefault(FIELD, "");
  }
}
