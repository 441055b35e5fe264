package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The help of every command fits the terminal, and its examples work. */
class HelpTest {
  private static final int COLUMNS = 80;

  /** A word on a command line, with or without quotes. */
  private static final Pattern WORD = Pattern.compile("'([^']*)'|(\\S+)");

  private static final Pattern WRITTEN =
      Pattern.compile(".*\\.(musicxml|html|svg|yaml|journal)|hearing");

  @TempDir Path folder;

  private static String help(String command) {
    List<Object> words = new ArrayList<>(List.of(command.split(" ")));
    words.removeIf(word -> word.toString().isEmpty());
    words.add("--help");
    return Session.of(words.toArray()).succeeded().out();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "open",
        "demo",
        "compare",
        "plan",
        "marks",
        "practice",
        "journal",
        "handout",
        "journal add",
        "journal show",
        "lesson",
        "lesson list",
        "lesson show",
        "scale",
        "audition",
        "chart",
        "check",
        "learn",
        "completion",
        "man"
      })
  void fitsTheTerminalAndEveryExampleWorks(String command) {
    String help = help(command);
    assertThat(help.lines()).allMatch(line -> line.length() <= COLUMNS);
    assertThat(help).contains("Usage: fingering", "Exit codes:", "  0  done");

    ImmutableList<String> examples = examples(help);
    assertThat(examples.size()).isBetween(1, 4);
    for (String example : examples) {
      Session session = typed(example);
      assertThat(session.complaints()).as(example).isEmpty();
      assertThat(session.code()).as(example).isIn(0, command.equals("check") ? 1 : 0);
    }
  }

  private static ImmutableList<String> examples(String help) {
    return help.replaceAll(" \\\\\n +", " ")
        .lines()
        .filter(line -> line.startsWith("  fingering "))
        .map(line -> line.replaceFirst("  fingering ", "").replaceFirst(" >\\S+$", ""))
        .collect(ImmutableList.toImmutableList());
  }

  /** Runs an example as typed in the project folder; new files go to the temporary folder. */
  private Session typed(String example) {
    List<Object> words = new ArrayList<>();
    Matcher word = WORD.matcher(example);
    while (word.find()) {
      String bare = word.group(1) == null ? word.group(2) : word.group(1);
      words.add(
          bare.startsWith("docs/")
              ? Path.of("..", bare)
              : WRITTEN.matcher(bare).matches() ? folder.resolve(bare) : bare);
    }
    if (words.get(0).equals("journal") && !words.contains("--journal")) {
      words.addAll(List.of("--journal", folder.resolve("practice.journal")));
    }
    if (words.get(0).equals("open")) {
      // It would wait for its readers.
      words.add("--help");
    }
    if (words.get(0).equals("practice")) {
      // Before the day of the performance, whenever this test runs.
      words.addAll(List.of("--today", "2026-11-30"));
    }
    return Session.of(words.toArray());
  }

  @ParameterizedTest
  @ValueSource(strings = {"plan", "compare", "practice", "check", "scale", "audition"})
  void longListsAreInSections(String command) {
    assertThat(help(command)).contains("\nOptions of '" + command + "'\n", "\nHelp\n");
  }
}
