package fingering.cli.file;

import com.google.common.hash.Hashing;
import fingering.musicxml.file.ScoreFile;
import fingering.tables.FingeringException;
import fingering.userfile.SmallFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The files that the program wrote itself. Scores, pages, pictures and calendars end in a mark with
 * a checksum of the rest. Only a file whose mark still fits may be replaced: nobody has changed it
 * since. Text and JSON have no mark, and are never replaced.
 */
public final class OwnFiles {
  private static final String WORDS = "Written by Fingering; replaced only if unchanged. SHA-256: ";

  /** The mark of a file in XML or HTML, a comment after everything else. */
  private static final Pattern COMMENT =
      Pattern.compile("<!-- " + Pattern.quote(WORDS) + "([A-Za-z0-9+/]{43}) -->\\n\\z");

  /** The mark of a calendar, its last property. */
  private static final Pattern PROPERTY =
      Pattern.compile("X-FINGERING-SHA256:([A-Za-z0-9+/]{43})\\r\\n(?=END:VCALENDAR\\r\\n\\z)");

  private static final String CALENDAR = "BEGIN:VCALENDAR";
  private static final String CALENDAR_END = "END:VCALENDAR";

  /** Larger than any page. */
  private static final int MAX_KIB = 64 * 1024;

  private OwnFiles() {}

  /** The text with a mark, in place of one that it may have; text that takes no mark unchanged. */
  static String marked(String text) {
    if (text.startsWith(CALENDAR)) {
      String bare = PROPERTY.matcher(text).replaceFirst("");
      int end = bare.lastIndexOf(CALENDAR_END);
      return end < 0
          ? text
          : bare.substring(0, end)
              + "X-FINGERING-SHA256:"
              + checksum(bare)
              + "\r\n"
              + bare.substring(end);
    }
    if (!text.startsWith("<")) {
      return text;
    }
    String without = COMMENT.matcher(text).replaceFirst("");
    String bare = without.endsWith("\n") ? without : without + "\n";
    return bare + "<!-- " + WORDS + checksum(bare) + " -->\n";
  }

  /** Whether a text has a mark that fits it. */
  static boolean unchanged(String text) {
    Matcher mark = (text.startsWith(CALENDAR) ? PROPERTY : COMMENT).matcher(text);
    if (!mark.find()) {
      return false;
    }
    String bare = text.substring(0, mark.start()) + text.substring(mark.end());
    return checksum(bare).equals(mark.group(1));
  }

  /** The checksum, without hyphens: two of them may not stand in a comment of XML. */
  private static String checksum(String text) {
    return Base64.getEncoder()
        .withoutPadding()
        .encodeToString(Hashing.sha256().hashString(text, StandardCharsets.UTF_8).asBytes());
  }

  /** Whether a file is a score that the program wrote and nobody has changed since. */
  public static boolean isUnchangedScore(Path file) {
    return isFile(file) && isScoreName(file) && text(() -> ScoreFile.read(file).text());
  }

  /** Whether a file, not a score, was written by the program and not changed since. */
  public static boolean isUnchangedPage(Path file) {
    return isFile(file)
        && !isScoreName(file)
        && text(() -> SmallFile.text(file, "a page", MAX_KIB));
  }

  private static boolean text(Supplier<String> reading) {
    try {
      return unchanged(reading.get());
    } catch (FingeringException e) {
      // It cannot be read, so the program did not write it.
      return false;
    }
  }

  private static boolean isFile(Path file) {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
  }

  private static boolean isScoreName(Path file) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    return Stream.of(".musicxml", ".xml", ".mxl").anyMatch(name::endsWith);
  }
}
