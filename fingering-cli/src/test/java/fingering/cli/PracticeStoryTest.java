package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.base.Splitter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The story in docs/practice.md: every command of it is run, one after the other. */
final class PracticeStoryTest {
  private static final Path PAGE = Path.of("..", "docs", "practice.md");
  private static final String INDENT = "    ";
  private static final String LEFT_OUT = "…";
  private static final Pattern WORD = Pattern.compile("'([^']*)'|(\\S+)");
  private static final Pattern BY_HAND = Pattern.compile("echo '([^']*)' >> (\\S+)");

  @TempDir Path folder;

  /** A command of the page, and what the page says that it prints. */
  private record Told(String command, List<String> printed) {}

  @Test
  void storyOfThreeWeeksIsWhatTheProgramPrints() throws IOException {
    List<Told> story = story();
    assertThat(story).hasSizeGreaterThan(15);
    assertThat(story.stream().filter(told -> !told.printed().isEmpty())).hasSizeGreaterThan(6);
    for (Told told : story) {
      Matcher byHand = BY_HAND.matcher(told.command());
      if (byHand.matches()) {
        Files.writeString(
            folder.resolve(byHand.group(2)), byHand.group(1) + "\n", StandardOpenOption.APPEND);
      } else {
        List<String> printed = run(told.command());
        if (!told.printed().isEmpty()) {
          assertPrinted(told, printed);
        }
      }
    }
  }

  private static List<Told> story() throws IOException {
    List<Told> story = new ArrayList<>();
    boolean inside = false;
    for (String line : Files.readAllLines(PAGE)) {
      boolean code = line.startsWith(INDENT);
      String text = code ? line.substring(INDENT.length()) : line;
      if (code && (text.startsWith("fingering ") || text.startsWith("echo "))) {
        story.add(new Told(text, new ArrayList<>()));
        inside = true;
      } else if (inside && (code || line.isBlank())) {
        story.get(story.size() - 1).printed().add(text);
      } else {
        inside = false;
      }
    }
    story.forEach(told -> strip(told.printed()));
    return story;
  }

  private static void strip(List<String> lines) {
    while (!lines.isEmpty() && lines.get(0).isBlank()) {
      lines.remove(0);
    }
    while (!lines.isEmpty() && lines.get(lines.size() - 1).isBlank()) {
      lines.remove(lines.size() - 1);
    }
  }

  /** Files of the story lie in a folder of their own; the page shows them as typed. */
  private List<String> run(String command) {
    List<Object> words = new ArrayList<>();
    Matcher matcher = WORD.matcher(command);
    String before = "";
    while (matcher.find()) {
      String word = matcher.group(1) == null ? matcher.group(2) : matcher.group(1);
      boolean file = List.of("--journal", "--calendar", "--exercises", "--output").contains(before);
      words.add(file ? folder.resolve(word) : word.startsWith("docs/") ? "../" + word : word);
      before = word;
    }
    words.remove(0);
    return Session.of(words.toArray()).succeeded().lines();
  }

  private void assertPrinted(Told told, List<String> printed) {
    String here = folder.resolve("x").toString().replaceFirst("x$", "");
    List<String> now = words(printed).stream().map(word -> word.replace(here, "")).toList();
    int from = 0;
    boolean skipped = false;
    for (List<String> part : parts(told.printed())) {
      int at = java.util.Collections.indexOfSubList(now.subList(from, now.size()), part);
      assertThat(at).as("%s: %s", told.command(), part).isGreaterThanOrEqualTo(0);
      if (!skipped) {
        assertThat(at).as("%s: %s", told.command(), part).isZero();
      }
      skipped = true;
      from += at + part.size();
    }
    if (!told.printed().get(told.printed().size() - 1).equals(LEFT_OUT)) {
      assertThat(from).as(told.command()).isEqualTo(now.size());
    }
  }

  /** What stands between lines that are left out, as words: paths of tests wrap otherwise. */
  private static List<List<String>> parts(List<String> lines) {
    List<List<String>> parts = new ArrayList<>();
    List<String> part = new ArrayList<>();
    for (String line : lines) {
      if (line.equals(LEFT_OUT)) {
        parts.add(words(part));
        part = new ArrayList<>();
      } else {
        part.add(line);
      }
    }
    parts.add(words(part));
    return parts;
  }

  private static List<String> words(List<String> lines) {
    return Splitter.onPattern("\\s+").omitEmptyStrings().splitToList(String.join("\n", lines));
  }
}
