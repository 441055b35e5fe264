package fingering.musicxml.xml;

import com.google.common.collect.ImmutableList;
import java.util.regex.Pattern;

/** Small questions about characters in XML text. */
public final class XmlText {

  /** More than this of a file's own words would hide what a message has to say. */
  private static final int MOST_SHOWN = 60;

  /** Where a list of names has so many characters, the rest is only counted. */
  private static final int MOST_LISTED = 120;

  // Spaces and line ends, and what would steer a terminal or turn the direction of a line.
  private static final Pattern UNPRINTABLE =
      Pattern.compile("[\\s\\p{Z}\\p{Cc}\\p{Cs}\\u202A-\\u202E\\u2066-\\u2069]+");

  private XmlText() {}

  /** Text of a file on one line, with one space where there are several or other such signs. */
  public static String oneLine(String text) {
    return UNPRINTABLE.matcher(text).replaceAll(" ").strip();
  }

  /** Text of a file as a message shows it: on one line, and cut where it is long. */
  public static String printable(String text) {
    // Cut first, so that a name of megabytes costs no more than one of a line.
    String start = text.substring(0, Math.min(text.length(), 4 * MOST_SHOWN));
    String line = oneLine(start);
    return line.length() <= MOST_SHOWN && start.length() == text.length()
        ? line
        : line.substring(0, Math.min(line.length(), MOST_SHOWN)) + "…";
  }

  /** Whether every character may stand in an XML 1.0 document, escaped or not. */
  public static boolean isLegal(String text) {
    return text.codePoints()
        .allMatch(
            c ->
                c == '\t'
                    || c == '\n'
                    || c == '\r'
                    || (c >= 0x20 && c < 0xD800)
                    || (c > 0xDFFF && c != 0xFFFE && c != 0xFFFF));
  }

  /** Whether the character is XML white space. */
  public static boolean isSpace(char c) {
    return c == ' ' || c == '\n' || c == '\t' || c == '\r';
  }

  /** Writes text so that it can stand between two tags. */
  public static String escape(String text) {
    StringBuilder out = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> out.append("&amp;");
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        // A bare carriage return would be read back as a line feed.
        case '\r' -> out.append("&#13;");
        default -> out.append(c);
      }
    }
    return out.toString();
  }

  /** Names to choose from as a message lists them: the first few, and how many more there are. */
  public static String listed(ImmutableList<String> names) {
    StringBuilder list = new StringBuilder();
    int named = 0;
    while (named < names.size() && list.length() < MOST_LISTED) {
      list.append(named == 0 ? "" : ", ").append(printable(names.get(named)));
      named++;
    }
    int more = names.size() - named;
    return list + (more > 0 ? " and %d more".formatted(more) : "");
  }

  /**
   * The line break and the indentation before a place in the text, or "" if what stands there does
   * not begin a line.
   */
  public static String leadBefore(String xml, int place) {
    int indent = place;
    while (indent > 0 && (xml.charAt(indent - 1) == ' ' || xml.charAt(indent - 1) == '\t')) {
      indent--;
    }
    int line = indent;
    if (line > 0 && xml.charAt(line - 1) == '\n') {
      line--;
    }
    if (line > 0 && xml.charAt(line - 1) == '\r') {
      line--;
    }
    return line == indent ? "" : xml.substring(line, place);
  }
}
