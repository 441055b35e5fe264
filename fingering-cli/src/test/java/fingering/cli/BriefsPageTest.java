package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What docs/briefs.md and docs/check-command.md show, against what the commands print. */
class BriefsPageTest {
  private static final Pattern WORD = Pattern.compile("'([^']*)'|(\\S+)");
  private static final String COMMAND = "fingering ";

  /**
   * A command of the page.
   *
   * @param shown the blocks below it, to the next command or to text that is no block
   */
  private record Example(String command, List<String> shown) {
    @Override
    public String toString() {
      return command;
    }
  }

  /** The commands on the demo that write no file and read none but the score. */
  static Stream<Example> examples() throws IOException {
    List<Example> examples = new ArrayList<>();
    List<String> shown = new ArrayList<>();
    List<String> lines = new ArrayList<>();
    for (String page : List.of("briefs.md", "check-command.md")) {
      lines.addAll(Files.readAllLines(Path.of("..", "docs", page)));
    }
    for (String line : lines) {
      if (line.startsWith("    " + COMMAND) && !line.startsWith("    fingering: ")) {
        shown = new ArrayList<>();
        examples.add(new Example(line.strip(), shown));
      } else if (line.startsWith("    ")) {
        shown.add(line.substring(4));
      } else if (!line.isEmpty()) {
        shown = new ArrayList<>();
      }
    }
    return examples.stream()
        .filter(example -> example.command().matches(".* (demo|lanterns)\\.musicxml.*"))
        .filter(example -> !example.command().contains(".json"));
  }

  private static Object[] words(String command) {
    return WORD.matcher(command.substring(COMMAND.length()))
        .results()
        .map(BriefsPageTest::unquoted)
        .map(word -> word.equals("demo.musicxml") ? Session.DEMO : word)
        .map(word -> word.equals("lanterns.musicxml") ? CheckCommandTest.LANTERNS : word)
        .toArray();
  }

  private static String unquoted(MatchResult word) {
    return word.group(1) == null ? word.group(2) : word.group(1);
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyLineShownIsPrinted(Example example) {
    Session session = Session.of(words(example.command()));
    List<String> printed =
        Stream.concat(session.out().lines(), session.err().lines()).map(String::strip).toList();
    assertThat(example.shown()).isNotEmpty();
    assertThat(printed).containsAll(example.shown().stream().map(String::strip).toList());
  }
}
