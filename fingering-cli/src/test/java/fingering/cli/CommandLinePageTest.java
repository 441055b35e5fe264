package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import fingering.cli.command.ExitCode;
import fingering.cli.terminal.AsciiFallback;
import fingering.cli.terminal.Screen;
import fingering.tables.NoteNames;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** docs/command-line.md shows what the program prints. */
class CommandLinePageTest {
  private static final Path PAGE = Path.of("..", "docs", "command-line.md");
  private static final Splitter CELLS = Splitter.on('|').trimResults().omitEmptyStrings();
  private static final Pattern WORD = Pattern.compile("'([^']*)'|(\\S+)");

  private static ImmutableList<String> lines;

  @BeforeAll
  static void read() throws IOException {
    lines = ImmutableList.copyOf(Files.readAllLines(PAGE));
  }

  private static Session typed(String line) {
    return Session.of(
        WORD.matcher(line)
            .results()
            .map(word -> word.group().startsWith("'") ? word.group(1) : word.group())
            .skip(1)
            .toArray());
  }

  @Test
  void scalesAndChartsCanBeTypedAsShown() {
    List<String> shown =
        lines.stream().filter(line -> line.matches(" +fingering (scale|chart) .*")).toList();
    assertThat(shown).hasSize(4);
    assertThat(shown).allSatisfy(line -> assertThat(typed(line).succeeded().out()).isNotEmpty());
    assertThat(typed(shown.get(0)).lines().get(0)).startsWith("B major");
    assertThat(typed(shown.get(3)).lines().get(0)).startsWith("B♭ major");
  }

  @Test
  void aMistypedCommandIsReportedAsShown() {
    int at = lines.indexOf("    fingering plna part.musicxml");
    assertThat(typed(lines.get(at)).refused(ExitCode.REFUSED).lines()).isEmpty();
    assertThat("    " + typed(lines.get(at)).err().strip()).isEqualTo(lines.get(at + 2));
  }

  @Test
  void charactersAreReplacedAsShown() {
    String page = String.join("\n", lines);
    for (String sign : List.of("♯", "♭", "↑", "↓", "×", "≠", "°", "◇", "·", "ß", "2½")) {
      String plain = AsciiFallback.fit(sign, text -> text.chars().allMatch(each -> each < 127));
      assertThat(page).contains("`" + plain + "`");
    }
    assertThat(page).contains("`" + Screen.VARIABLE + "`");
  }

  @Test
  void notesHaveTheNamesShown() {
    List<String> head = CELLS.splitToList(line("| | `en`"));
    for (String row : List.of("| B natural", "| B flat", "| F sharp", "| E flat", "| C |")) {
      List<String> cells = CELLS.splitToList(line(row));
      String english = cells.get(0).equals("B natural") ? "B" : cells.get(0);
      NoteNames.Note note = NoteNames.parse("en").note(english);
      for (int i = 1; i < cells.size(); i++) {
        NoteNames names = NoteNames.parse(head.get(i - 1).replace("`", ""));
        assertThat(Splitter.on(", ").splitToList(cells.get(i)))
            .allMatch(name -> names.note(name).equals(note))
            .startsWith(names.name(note));
      }
    }
  }

  private static String line(String start) {
    return lines.stream().filter(line -> line.startsWith(start)).findFirst().orElseThrow();
  }

  @Test
  void exitCodesAreThoseOfTheProgram() {
    assertThat(
            lines.stream()
                .map(Pattern.compile("\\| (\\d) \\| .*")::matcher)
                .flatMap(matcher -> matcher.results().map(MatchResult::group))
                .map(row -> CELLS.splitToList(row).get(0)))
        .containsExactly(
            String.valueOf(ExitCode.DONE),
            String.valueOf(ExitCode.FINDINGS),
            String.valueOf(ExitCode.REFUSED),
            String.valueOf(ExitCode.FAILED));
  }
}
