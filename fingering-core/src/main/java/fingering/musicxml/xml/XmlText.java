package fingering.musicxml.xml;

import com.google.common.collect.ImmutableList;
import java.util.regex.Pattern;

/** Utilities for XML text, and for text from a file in messages. */
public final class XmlText {

  /** Longer text from a file would hide the message around it. */
  private static final int MOST_SHOWN = 60;

  /** A list of names stops after this number of characters, and the rest is only counted. */
  private static final int MOST_LISTED = 120;

  // Spaces, line ends, and characters that control a terminal or the direction of text.
  private static final Pattern UNPRINTABLE =
      Pattern.compile("[\\s\\p{Z}\\p{Cc}\\p{Cs}\\u202A-\\u202E\\u2066-\\u2069]+");

  private XmlText() {}

  /** Returns text on one line: white space and unprintable characters become single spaces. */
  public static String oneLine(String text) {
    return UNPRINTABLE.matcher(text).replaceAll(" ").strip();
  }

  /** Returns text from a file for a message: on one line, and cut if it is long. */
  public static String printable(String text) {
    // Truncate first: the text may be megabytes long.
    String start = text.substring(0, Math.min(text.length(), 4 * MOST_SHOWN));
    String line = oneLine(start);
    return line.length() <= MOST_SHOWN && start.length() == text.length()
        ? line
        : line.substring(0, Math.min(line.length(), MOST_SHOWN)) + "…";
  }

  /** Returns whether every character is allowed in an XML 1.0 document, escaped or not. */
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

  /** Returns whether the character is XML white space. */
  public static boolean isSpace(char c) {
    return c == ' ' || c == '\n' || c == '\t' || c == '\r';
  }

  /** Escapes text for use between two tags. */
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

  /** Returns a list of choices for a message: the first few, and the number of others. */
  public static String listed(ImmutableList<String> names) {
    StringBuilder list = new StringBuilder();
    int shown = 0;
    while (shown < names.size() && list.length() < MOST_LISTED) {
      list.append(shown == 0 ? "" : ", ").append(printable(names.get(shown)));
      shown++;
    }
    int more = names.size() - shown;
    return list + (more > 0 ? " and %d more".formatted(more) : "");
  }

  /**
   * Returns the line break and the indentation before a position in the text, or "" if the position
   * is not at the beginning of a line.
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
